package dev.warmlane.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Files that belong together, written all or not at all: each first under another name, then all moved into place. If
 * one fails, what was there before is there again. Runs that write into one folder wait for each other, and the next one
 * sweeps what a killed one left.
 */
public final class FileSet {

    private static final String DRAFTS = ".draft-";

    private final Map<String, byte[]> contents = new LinkedHashMap<>();
    private final Set<String> superseded = new LinkedHashSet<>();

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
     * Names files that earlier runs may have written and that do not go with these: they are removed unless they are
     * written again.
     */
    public FileSet supersede(Collection<String> names) {
        superseded.addAll(names);
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
        for (String name : contents.keySet()) {
            refuse(folder.resolve(name));
        }
        boolean done = false;
        make(folder);
        try {
            try (FolderLock lock = lock(folder)) {
                if (lock.alone()) {
                    sweep(folder);
                }
                writeInto(folder, mover);
            }
            done = true;
        } finally {
            if (!done && made != null) {
                deleteEmpty(folder.toAbsolutePath(), made);
            }
        }
        return contents.keySet().stream().map(folder::resolve).toList();
    }

    private void writeInto(Path folder, Mover mover) throws IOException {
        Path drafts = draftsIn(folder);
        try {
            writeDrafts(drafts, folder);
            moveAll(drafts, folder, mover);
        } catch (IOException e) {
            if (e.getSuppressed().length == 0) {
                deleteAll(drafts);
                throw e;
            }
            // what could not be put back is nobody's draft any more
            Path kept = drafts.resolveSibling(drafts.getFileName().toString().replace(DRAFTS, "kept-"));
            move(drafts, kept);
            throw BoundedFile.because(folder, e.getMessage() + "; what was there before lies in " + kept, e);
        }
        deleteAll(drafts);
    }

    private static FolderLock lock(Path folder) throws IOException {
        try {
            return FolderLock.of(folder);
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    /** Removes the drafts of runs that were killed: nobody else is writing here. */
    private static void sweep(Path folder) throws IOException {
        List<Path> left;
        try (Stream<Path> inside = Files.list(folder)) {
            left = inside.filter(file -> file.getFileName().toString().startsWith(DRAFTS))
                    .filter(file -> Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
                    .toList();
        }
        for (Path drafts : left) {
            deleteAll(drafts);
        }
    }

    private static void make(Path folder) throws IOException {
        try {
            Files.createDirectories(folder);
        } catch (NoSuchFileException e) {
            throw BoundedFile.because(folder, "no folder can be made there", e);
        } catch (FileAlreadyExistsException e) {
            throw BoundedFile.because(folder, "is a file, not a folder; choose another output folder", e);
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    private static Path draftsIn(Path folder) throws IOException {
        try {
            return Files.createTempDirectory(folder, DRAFTS);
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
        return BoundedFile.because(folder, "cannot be written to" + (reason == null ? "" : ": " + reason), cause);
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
                if (Files.exists(target)) {
                    move(target, drafts.resolve(name + ".before"));
                }
                moved.add(name);
                mover.move(drafts.resolve(name), target);
            }
            for (String name : superseded) {
                Path target = folder.resolve(name);
                if (!contents.containsKey(name) && Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
                    Path before = drafts.resolve(name + ".before");
                    Files.createDirectories(folderOf(before));
                    move(target, before);
                    moved.add(name);
                }
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

    /** Only a file is replaced by a file: no folder, and no link or device that leads somewhere else. */
    private static void refuse(Path target) throws IOException {
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(target + " is a folder; remove it or choose another output");
        }
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)
                && !Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(target + " is a link or a device and not a file; choose another output");
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

    /** Removes folders that were made for nothing, and nothing that somebody else has put there. */
    private static void deleteEmpty(Path folder, Path outermost) {
        for (Path at = folder; at != null && at.startsWith(outermost); at = at.getParent()) {
            try {
                Files.deleteIfExists(at);
            } catch (IOException e) {
                return;
            }
        }
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
