package dev.warmlane.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads files that a person named, which may be anything: a folder, a film, a device without an end. */
public final class BoundedFile {

    private static final int MEGABYTE = 1 << 20;

    private BoundedFile() {}

    /**
     * The bytes of a file, as long as there are not too many. They are counted while reading, because what has no end
     * has no size either.
     *
     * @param file the file
     * @param megabytes how much is allowed, in 1024 · 1024 bytes
     * @param what what the file should be, for the message: "a weather file"
     * @throws FileSystemException naming the file, if it is a folder or longer
     * @throws IOException if it cannot be read
     */
    public static byte[] read(Path file, int megabytes, String what) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "is a folder; name " + what + " that lies in it");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(megabytes * MEGABYTE + 1);
        } catch (NoSuchFileException e) {
            throw new NoSuchFileException(file.toString(), null, "there is no such file");
        } catch (AccessDeniedException e) {
            throw new AccessDeniedException(file.toString(), null, "access is denied");
        } catch (FileSystemException e) {
            throw e;
        } catch (IOException e) {
            throw because(file, "cannot be read: " + e.getMessage(), e);
        }
        if (bytes.length > megabytes * MEGABYTE) {
            throw new FileSystemException(
                    file.toString(), null, "has more than " + megabytes + " MB, which is not " + what);
        }
        return bytes;
    }

    /** An error of a file that names it, and why. */
    static FileSystemException because(Path file, String reason, IOException cause) {
        FileSystemException named = new FileSystemException(file.toString(), null, reason);
        named.initCause(cause);
        return named;
    }
}
