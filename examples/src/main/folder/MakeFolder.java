import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes a folder that runs on a machine without Java: the jar, its launchers, and a Java run-time of the modules that it
 * needs, made by the JDK's own jlink. It runs on the kind of system that it was made on. Started by
 * {@code mvn -q -Pfolder package} from its source; the arguments are the checkout and the folder to make.
 */
public final class MakeFolder {

    /** What jdeps names of the jar; the readers' csv library needs the last. */
    private static final String MODULES = "java.base,java.desktop,java.sql";

    /** From here on jlink calls its compression otherwise. */
    private static final int NAMED_COMPRESSION = 21;

    private static final long MEGABYTE = 1_000_000;

    private MakeFolder() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path checkout = Path.of(arguments[0]);
        Path folder = Path.of(arguments[1]);
        Path built = checkout.resolve("examples").resolve("target");
        delete(folder);
        Files.createDirectories(folder);
        for (String name : List.of("warmlane.jar", "warmlane", "warmlane.cmd")) {
            Files.copy(built.resolve(name), folder.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
        }
        folder.resolve("warmlane").toFile().setExecutable(true, false);
        Files.copy(checkout.resolve("LICENSE"), folder.resolve("LICENSE"));
        copy(checkout, folder, Path.of("docs"));
        copy(checkout, folder, Path.of("examples", "scenarios"));
        copy(checkout, folder, Path.of("weather-samples"));
        link(folder.resolve("runtime"));
        try (Stream<Path> files = Files.walk(folder)) {
            long bytes = files.filter(Files::isRegularFile).mapToLong(MakeFolder::size).sum();
            System.out.println(folder + ": " + bytes / MEGABYTE + " MB, started in " + milliseconds(folder) + " ms");
        }
    }

    /** The Java run-time, with its class archive; the archive for heaps above 32 GB is left out. */
    private static void link(Path runtime) throws IOException {
        String compression = Runtime.version().feature() < NAMED_COMPRESSION ? "2" : "zip-6";
        ToolProvider jlink = ToolProvider.findFirst("jlink")
                .orElseThrow(() -> new IOException("this Java has no jlink; build with a JDK"));
        int code = jlink.run(
                System.out,
                System.err,
                "--add-modules",
                MODULES,
                "--strip-java-debug-attributes",
                "--no-man-pages",
                "--no-header-files",
                "--compress=" + compression,
                "--generate-cds-archive",
                "--output",
                runtime.toString());
        if (code != 0) {
            throw new IOException("jlink ended with " + code);
        }
        try (Stream<Path> files = Files.walk(runtime)) {
            for (Path file : files.filter(f -> f.endsWith("classes_nocoops.jsa")).toList()) {
                Files.delete(file);
            }
        }
    }

    /** Starts what was made, which so is known to start. */
    private static long milliseconds(Path folder) throws IOException, InterruptedException {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        List<String> command = new ArrayList<>(windows ? List.of("cmd", "/c") : List.of());
        command.add(folder.resolve(windows ? "warmlane.cmd" : "warmlane").toString());
        command.add("--version");
        ProcessBuilder start = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        start.environment().remove("JAVA_HOME");
        long before = System.nanoTime();
        Process run = start.start();
        String printed = new String(run.getInputStream().readAllBytes());
        if (run.waitFor() != 0 || !printed.startsWith("warmlane ")) {
            throw new IOException("what was made does not start: " + printed);
        }
        return (System.nanoTime() - before) / MEGABYTE;
    }

    private static void copy(Path from, Path to, Path what) throws IOException {
        try (Stream<Path> files = Files.walk(from.resolve(what))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.resolveSibling(""));
                Files.copy(file, copy);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                file.toFile().setWritable(true);
                Files.delete(file);
            }
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
