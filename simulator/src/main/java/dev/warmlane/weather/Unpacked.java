package dev.warmlane.weather;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The files in a gz or zip archive, each no longer than a weather file may be and all together not either: an archive that
 * grows beyond it is refused as it is unpacked, whatever it says of its size.
 */
final class Unpacked {

    private static final int ENTRIES_AT_MOST = 100;

    /** A file of an archive. */
    static final class Entry {
        private final String name;
        private final byte[] bytes;

        private Entry(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        String name() {
            return name;
        }

        byte[] bytes() {
            return bytes;
        }
    }

    private Unpacked() {}

    static boolean isGzip(byte[] bytes) {
        return startsWith(bytes, 0x1F, 0x8B);
    }

    static boolean isZip(byte[] bytes) {
        return startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 'P', 'K', 5, 6);
    }

    static boolean startsWith(byte[] bytes, int... magic) {
        for (int i = 0; i < magic.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != magic[i]) {
                return false;
            }
        }
        return true;
    }

    static byte[] gunzip(Path path, byte[] bytes, int bytesAtMost) throws WeatherFileException {
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return bounded(path, in, bytesAtMost);
        } catch (WeatherFileException e) {
            throw e;
        } catch (IOException e) {
            throw broken(path, "gz");
        }
    }

    /** The files of a zip in its order; folders, and what a desktop puts beside files, are passed over. */
    static List<Entry> unzip(Path path, byte[] bytes, int bytesAtMost) throws WeatherFileException {
        List<Entry> entries = new ArrayList<>();
        int left = bytesAtMost;
        int seen = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (++seen > ENTRIES_AT_MOST) {
                    throw tooMuch(path, "more than " + ENTRIES_AT_MOST + " files");
                }
                byte[] content = bounded(path, in, left);
                left -= content.length;
                if (!entry.isDirectory() && !isClutter(entry.getName())) {
                    entries.add(new Entry(entry.getName(), content));
                }
            }
        } catch (WeatherFileException e) {
            throw e;
        } catch (IOException | IllegalArgumentException e) {
            throw broken(path, "zip");
        }
        return entries;
    }

    private static boolean isClutter(String name) {
        return name.startsWith("__MACOSX/") || name.endsWith(".DS_Store");
    }

    private static byte[] bounded(Path path, InputStream in, int bytesAtMost) throws IOException {
        byte[] content = in.readNBytes(bytesAtMost + 1);
        if (content.length > bytesAtMost) {
            throw tooMuch(path, "an archive that unpacks to more than a weather file may have");
        }
        return content;
    }

    private static WeatherFileException tooMuch(Path path, String found) {
        return new WeatherFileException(
                path, 0, "", found, "an archive of one weather file", "Unpack it and name the weather file.");
    }

    private static WeatherFileException broken(Path path, String kind) {
        return new WeatherFileException(
                path,
                0,
                "",
                "a " + kind + " archive that is broken or locked",
                "an archive of one weather file",
                "Fetch it again, or unpack it and name the weather file.");
    }
}
