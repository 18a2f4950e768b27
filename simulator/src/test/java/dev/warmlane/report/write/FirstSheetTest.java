package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.InventedSheets;
import dev.warmlane.report.Report;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FirstSheetTest {

    @Test
    void keepsAllThatHasRoom() {
        assertThat(headings(InventedSheets.of(20))).containsExactly("Early", "Late", "Last");
        assertThat(secondSheet(InventedSheets.of(20))).doesNotContain("that is early", "that is late");
    }

    @Test
    void whatComesLaterGivesWayFirst() {
        Report full = InventedSheets.of(110);

        assertThat(headings(full)).containsExactly("Early", "Last");
        assertThat(secondSheet(full)).contains("that is late, no. 0<").doesNotContain("that is early", "It stays");
    }

    @Test
    void whatMayNotGiveWayStays() {
        Report overfull = InventedSheets.of(400);

        assertThat(headings(overfull)).containsExactly("Last");
        assertThat(secondSheet(overfull)).contains("no. 399<", "that is early", "that is late");
    }

    @Test
    void isSetTighterBeforeWhatHoldsFirmerGoes() {
        Report roomy = InventedSheets.firm(20);
        assertThat(headings(roomy)).containsExactly("Firm", "Loose");
        assertThat(isTight(roomy)).isFalse();

        Report withoutTheLoose = InventedSheets.firm(120);
        assertThat(headings(withoutTheLoose)).containsExactly("Firm");
        assertThat(isTight(withoutTheLoose)).isFalse();

        Report full = InventedSheets.firm(132);
        assertThat(headings(full)).contains("Firm");
        assertThat(isTight(full)).isTrue();

        Report overfull = InventedSheets.firm(400);
        assertThat(headings(overfull)).isEmpty();
        assertThat(secondSheet(overfull)).contains("that is firm, no. 399<", "that is loose");
    }

    private static boolean isTight(Report report) {
        return HtmlWriter.page(report).contains("<main class=\"sheet first tight\">");
    }

    private static List<String> headings(Report report) {
        String page = HtmlWriter.page(report);
        return Pattern.compile("<h2>(.*?)</h2>")
                .matcher(page.substring(0, page.indexOf("</main>")))
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    private static String secondSheet(Report report) {
        String page = HtmlWriter.page(report);
        return page.substring(page.indexOf("</main>"));
    }
}
