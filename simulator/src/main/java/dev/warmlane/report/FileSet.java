package dev.warmlane.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Files that belong together, written all or not at all: each first under another name, then all moved into place. If
 * one fails, what was there before is there again.
 */
public final class FileSet {

    private final Map<String, byte[]> contents = new LinkedHashMap<>();

    /** Starts without files. */
    public FileSet() {}

    /** Adds a text, to be written as UTF-8; a name may lie in a folder, {@code charts/season.svg}. */
    public FileSet add(String name, String text) {
        return add(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Adds a file of any kind. */
    public FileSet add(String name, byte[] content) {
        contents.put(name, content.clone());
        return this;
    }

    /**
     * Writes the files; those that are there already are replaced, the folder is made where it is missing.
     *
     * @return the files, in the order they were added
     * @throws IOException if one of them cannot be written; none then has changed
     */
    public List<Path> write(Path folder) throws IOException {
        return write(folder, FileSet::move);
    }

    List<Path> write(Path folder, Mover mover) throws IOException {
        Path made = firstMissing(folder.toAbsolutePath());
        boolean done = false;
        try {
            make(folder);
            Path drafts = draftsIn(folder);
            try {
                writeDrafts(drafts, folder);
                moveAll(drafts, folder, mover);
            } catch (IOException e) {
                // what could not be put back stays with the drafts
                if (e.getSuppressed().length == 0) {
                    deleteAll(drafts);
                }
                throw e;
            }
            deleteAll(drafts);
            done = true;
        } finally {
            if (!done && made != null && Files.isDirectory(made)) {
                deleteAll(made);
            }
        }
        return contents.keySet().stream().map(folder::resolve).toList();
    }

    private static void make(Path folder) throws IOException {
        try {
            Files.createDirectories(folder);
        } catch (NoSuchFileException e) {
            throw because(folder, "no folder can be made there", e);
        }
    }

    private static Path draftsIn(Path folder) throws IOException {
        try {
            return Files.createTempDirectory(folder, ".draft-");
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    private void writeDrafts(Path drafts, Path folder) throws IOException {
        try {
            for (Map.Entry<String, byte[]> file : contents.entrySet()) {
                Path draft = drafts.resolve(file.getKey());
                Files.createDirectories(folderOf(draft));
                Files.write(draft, file.getValue());
            }
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    /** The folder that a person named and not the draft that nobody knows of. */
    private static IOException unwritable(Path folder, IOException cause) {
        String reason = cause instanceof FileSystemException fault ? fault.getReason() : cause.getMessage();
        if (cause instanceof AccessDeniedException) {
            reason = "access is denied";
        }
        return because(folder, "cannot be written to" + (reason == null ? "" : ": " + reason), cause);
    }

    private static IOException because(Path folder, String reason, IOException cause) {
        FileSystemException named = new FileSystemException(folder.toString(), null, reason);
        named.initCause(cause);
        return named;
    }

    private void moveAll(Path drafts, Path folder, Mover mover) throws IOException {
        List<String> moved = new ArrayList<>();
        List<Path> made = new ArrayList<>();
        try {
            for (String name : contents.keySet()) {
                Path target = folder.resolve(name);
                Path missing = firstMissing(folderOf(target));
                if (missing != null) {
                    made.add(missing);
                    Files.createDirectories(folderOf(target));
                }
                if (!Files.isDirectory(folderOf(target))) {
                    throw new IOException(
                            folderOf(target) + " is a file, not a folder; remove it or choose another output folder");
                }
                if (Files.isDirectory(target)) {
                    throw new IOException(target + " is a folder; remove it or choose another output folder");
                }
                if (Files.exists(target)) {
                    move(target, drafts.resolve(name + ".before"));
                }
                moved.add(name);
                mover.move(drafts.resolve(name), target);
            }
        } catch (IOException e) {
            for (String name : moved) {
                putBack(drafts.resolve(name + ".before"), folder.resolve(name), e);
            }
            for (Path folderMade : made) {
                takeBack(folderMade, e);
            }
            throw e;
        }
    }

    private static void putBack(Path before, Path target, IOException cause) {
        try {
            Files.deleteIfExists(target);
            if (Files.exists(before)) {
                move(before, target);
            }
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    private static void takeBack(Path made, IOException cause) {
        try {
            deleteAll(made);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /** The folder that a file within a folder lies in. */
    private static Path folderOf(Path file) {
        return file.resolveSibling(".").normalize();
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The outermost folder of a path that is not there yet, or null if all are. */
    private static @Nullable Path firstMissing(Path folder) {
        Path missing = null;
        for (Path at = folder; at != null && !Files.exists(at); at = at.getParent()) {
            missing = at;
        }
        return missing;
    }

    private static void deleteAll(Path folder) throws IOException {
        List<Path> inside;
        try (Stream<Path> walk = Files.walk(folder)) {
            inside = new ArrayList<>(walk.toList());
        }
        // deepest first
        for (int i = inside.size() - 1; i >= 0; i--) {
            Files.deleteIfExists(inside.get(i));
        }
    }

    /** Moves a file. */
    interface Mover {
        void move(Path from, Path to) throws IOException;
    }
}
