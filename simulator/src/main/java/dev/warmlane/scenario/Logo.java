package dev.warmlane.scenario;

import dev.warmlane.files.BoundedFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;

/**
 * A picture for a letterhead, which goes into the page as it is.
 *
 * @param file its file as the scenario names it
 * @param mediaType {@code image/png} or {@code image/jpeg}
 * @param base64 its bytes
 */
public record Logo(String file, String mediaType, String base64) {

    /** A page is mailed: more than this is no logo, bytes; own choice. */
    public static final int AT_MOST_BYTES = 300_000;

    private static final int MEGABYTES = 4;

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    /**
     * Reads one. What it is, is told by how its bytes begin and not by its name (PNG: ISO/IEC 15948, 5.2; JPEG: ITU-T
     * T.81, B.1.1.3).
     *
     * @param file the file
     * @param named how the scenario names it
     * @throws IOException if it cannot be read
     * @throws IllegalArgumentException if it is neither PNG nor JPEG, or too large; says how to mend it
     */
    public static Logo read(Path file, String named) throws IOException {
        byte[] bytes = BoundedFile.read(file, MEGABYTES, "a logo");
        if (bytes.length > AT_MOST_BYTES) {
            throw new IllegalArgumentException("has " + bytes.length / 1000 + " kB; allowed: at most "
                    + AT_MOST_BYTES / 1000 + " kB; save it smaller, 600 pixels across are enough for paper");
        }
        if (begins(bytes, PNG)) {
            return new Logo(named, "image/png", Base64.getEncoder().encodeToString(bytes));
        }
        if (begins(bytes, JPEG)) {
            return new Logo(named, "image/jpeg", Base64.getEncoder().encodeToString(bytes));
        }
        throw new IllegalArgumentException("is neither PNG nor JPEG; save the logo as one of them");
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length > with.length && Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }
}
