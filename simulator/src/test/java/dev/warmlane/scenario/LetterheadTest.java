package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose report it is: words as they are given, and a picture that is looked at before it goes into a page. */
class LetterheadTest {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 1, 2, 3};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1, 2, 3};

    @TempDir
    private Path folder;

    private Path beside() throws IOException {
        return Files.createDirectories(folder.resolve("a").resolve("b"));
    }

    @Test
    void wordsComeAsTheyAreGiven() throws IOException {
        ReportSettings report = read("""
                [report]
                company = "Sunny Pools Ltd"
                contact = "A. Sample, 555-0100"
                prepared_for = "Club committee"
                offer = "2026-17"
                date = "May 3, 2026"
                place = "Springfield"
                """).report();

        assertThat(report.letterhead())
                .isEqualTo(Letterhead.builder()
                        .company("Sunny Pools Ltd")
                        .contact("A. Sample, 555-0100")
                        .preparedFor("Club committee")
                        .offer("2026-17")
                        .date("May 3, 2026")
                        .place("Springfield")
                        .build());
        assertThat(read("").report().letterhead()).isEqualTo(Letterhead.NONE);
    }

    @Test
    void pictureIsToldByItsBytes() throws IOException {
        Files.write(beside().resolve("logo.jpg"), PNG);
        assertThat(read("[report]\nlogo = \"logo.jpg\"\n").report().letterhead().logo())
                .hasValue(new Logo("logo.jpg", "image/png", Base64.getEncoder().encodeToString(PNG)));

        Files.write(beside().resolve("logo.bin"), JPEG);
        assertThat(read("[report]\nlogo = \"logo.bin\"\n").report().letterhead().logo())
                .map(Logo::mediaType)
                .hasValue("image/jpeg");
    }

    @Test
    void anotherFileIsNoLogo() throws IOException {
        assertThat(message("logo = \"none.png\"")).contains("[report] logo: no such file: none.png, seen from");
        assertThat(message("logo = \".\"")).contains("[report] logo: cannot be read", "is a folder");

        Files.writeString(beside().resolve("logo.png"), "<svg>");
        assertThat(message("logo = \"logo.png\"")).contains("logo.png is neither PNG nor JPEG; save the logo");

        byte[] large = Arrays.copyOf(PNG, Logo.AT_MOST_BYTES + 1000);
        Files.write(beside().resolve("logo.png"), large);
        assertThat(message("logo = \"logo.png\"")).contains("has 301 kB; allowed: at most 300 kB");
    }

    private Scenario read(String report) throws IOException {
        return Demos.read(Files.readString(Demos.all().get(0)).replaceAll("(?s)\\[report].*", "") + report, folder);
    }

    private String message(String key) {
        return String.valueOf(catchThrowableOfType(ScenarioException.class, () -> read("[report]\n" + key + "\n"))
                .getMessage());
    }
}
