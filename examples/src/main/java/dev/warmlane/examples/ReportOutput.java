package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.report.Report;
import dev.warmlane.report.write.ReportFiles;
import dev.warmlane.report.write.TextWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** How much of a report is printed, and where its files go. */
final class ReportOutput {

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "Folder to write page, text, charts and csv files to; made where it is missing.")
    private @Nullable Path output;

    @Option(
            names = {"-f", "--full"},
            description = "Print all of it, as the text file has it, and not its first pages only.")
    private boolean full;

    /** Prints the report; where a folder was given, writes its files there and says so. */
    void hand(CommandSpec spec, Report report) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        List<Path> written = List.of();
        if (output != null) {
            ReportFiles files = ReportFiles.of(report);
            written = files.files().write(output);
            files.withoutCharts().ifPresent(why -> spec.commandLine().getErr().println("warning: " + why));
        }
        out.print(full ? TextWriter.full(report) : TextWriter.brief(report));
        if (!written.isEmpty()) {
            out.println();
            out.println("Written:");
            written.forEach(file -> out.println("  " + Printable.line(file.toString())));
            // the one to look at stands last, where the list has not carried it out of sight
            written.stream()
                    .map(Path::toString)
                    .filter(file -> file.endsWith(".html"))
                    .findFirst()
                    .ifPresent(page -> out.println("Open in a browser: " + Printable.line(page)));
        }
        out.flush();
    }
}
