package dev.warmlane.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Keeps two runs from writing into one folder at once: the second waits for the first, which takes a moment. The lock
 * is of the operating system, which lets go of it when a run is killed.
 */
final class FolderLock implements Closeable {

    private static final String NAME = ".warmlane.lock";

    /** Threads of one program cannot hold each other up with locks of the operating system. */
    private static final ReentrantLock THREADS = new ReentrantLock();

    private final Path file;
    private final FileChannel channel;
    private final boolean alone;

    private FolderLock(Path file, FileChannel channel, boolean alone) {
        this.file = file;
        this.channel = channel;
        this.alone = alone;
    }

    /** Waits for the lock of a folder, which is made where it is missing. */
    static FolderLock of(Path folder) throws IOException {
        THREADS.lock();
        try {
            while (true) {
                FolderLock lock = attempt(folder);
                if (lock != null) {
                    return lock;
                }
            }
        } catch (IOException | RuntimeException | Error e) {
            THREADS.unlock();
            throw e;
        }
    }

    /** Nothing where the one that held the lock took the file, or the folder, away with it. */
    private static @Nullable FolderLock attempt(Path folder) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve(NAME);
        FileChannel channel;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (NoSuchFileException e) {
            if (Files.isDirectory(folder)) {
                throw e;
            }
            return null;
        }
        boolean kept = false;
        try {
            FileLock lock = locked(channel);
            kept = lock == null || isStill(file, channel);
            return kept ? new FolderLock(file, channel, lock != null) : null;
        } finally {
            if (!kept) {
                channel.close();
            }
        }
    }

    /** Nothing where the file system knows no locks. */
    private static @Nullable FileLock locked(FileChannel channel) {
        try {
            return channel.lock();
        } catch (IOException e) {
            return null;
        }
    }

    /** Whether the file that is locked is still the one that others will find: it has a mark that only we can write. */
    private static boolean isStill(Path file, FileChannel channel) throws IOException {
        long size = channel.size();
        channel.position(size);
        channel.write(ByteBuffer.allocate(1));
        return Files.exists(file) && Files.size(file) == size + 1;
    }

    /** Whether nobody else can be writing into the folder. */
    boolean alone() {
        return alone;
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            // while it is still locked: whoever waits for it sees that it is gone and makes a new one
            Files.deleteIfExists(file);
        } finally {
            THREADS.unlock();
        }
    }
}
