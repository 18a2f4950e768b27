package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.report.WeatherReport;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.PlainWeatherWriter;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.generate.NormalsFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A typical year for a site that has monthly normals and no weather file. */
@Command(
        name = "generate",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Makes a typical year from twelve monthly normals, for a site that has no weather file, and says"
                + " what it holds by month.",
        footer = {
            "",
            "Example:",
            "  warmlane generate weather-samples/cool-coast.normals.csv --output my-town.csv",
            "prints the year by month and writes its 8760 hours to my-town.csv, which a scenario can name."
        })
final class GenerateCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "NORMALS",
            description = "Monthly normals (csv): the site and twelve months of global irradiation, air temperature and"
                    + " its daily range, dew point and wind.")
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private Path normalsFile;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Weather file to write (plain csv); its folder must be there.")
    private @Nullable Path output;

    @Option(
            names = {"-s", "--seed"},
            paramLabel = "N",
            description = "Another seed than the file's: other days with the same month means.")
    private @Nullable Long seed;

    @Option(
            names = {"-u", "--units"},
            defaultValue = "metric",
            converter = UnitsConverter.class,
            description = "Units of what is printed: metric (the default) or us.")
    private UnitSystem units = UnitSystem.METRIC;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before it runs
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (output != null && Files.exists(output) && Files.isSameFile(output, normalsFile)) {
            throw new ParameterException(
                    spec.commandLine(), "--output: " + output + " is the file of normals; give the year another name");
        }
        WeatherYear year = year();
        if (output != null) {
            PlainWeatherWriter.write(year, output);
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(TextWriter.full(WeatherReport.of(year, units)));
        if (output != null) {
            out.println();
            out.println("Written:");
            out.println("  " + Printable.line(output.toString()));
        }
        out.flush();
        return 0;
    }

    private WeatherYear year() throws IOException {
        try {
            NormalsFile normals = NormalsFile.read(normalsFile);
            return new NormalsFile(normals.site(), normals.normals(), seed == null ? normals.seed() : seed).generate();
        } catch (IllegalArgumentException e) {
            String problem = String.valueOf(e.getMessage());
            String file = normalsFile.toString();
            throw new IOException(problem.startsWith(file) ? problem : file + ": " + problem, e);
        }
    }
}
