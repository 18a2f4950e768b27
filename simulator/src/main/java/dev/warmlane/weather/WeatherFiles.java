package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads a typical year from a file: TMY3 csv, TMY2, EPW, PVGIS typical year csv, or the project's own plain csv. The
 * format is found from the content, never from the name.
 *
 * <p>Every format goes the same way: rows are put into local standard time, values that cannot be are taken out, the
 * time that irradiance belongs to is tested by closure (GHI = DHI + DNI cos z), gaps are filled if they are short,
 * humidity and the long-wave irradiance of the sky are completed. Whatever was mended or estimated is a
 * {@link WeatherFinding} of the year; what cannot be trusted is refused with a {@link WeatherFileException}.
 */
public final class WeatherFiles {

    private static final List<WeatherFormat> FORMATS =
            List.of(new PlainFormat(), new EpwFormat(), new PvgisFormat(), new Tmy3Format(), new Tmy2Format());

    private WeatherFiles() {}

    /**
     * Reads a file by its own conventions.
     *
     * @throws WeatherFileException if the file is of no known format, is broken, or cannot be trusted
     * @throws IOException if it cannot be opened
     */
    public static WeatherYear read(Path file) throws IOException {
        return read(file, WeatherReadOptions.defaults());
    }

    /**
     * Reads a file with what the user knows better.
     *
     * @throws WeatherFileException if the file is of no known format, is broken, or cannot be trusted
     * @throws IOException if it cannot be opened
     */
    public static WeatherYear read(Path file, WeatherReadOptions options) throws IOException {
        Findings findings = new Findings();
        HourTable table = table(file, options, findings);
        try {
            return WeatherChecks.year(table, table.header.format() + ", " + file.getFileName(), options, findings);
        } catch (Refusal refusal) {
            throw refusal.of(file);
        }
    }

    /**
     * Reads the real years of a file, one or many, by the calendar of local standard time, the earliest first. Each goes
     * the whole way that a typical year goes, and each by itself: one that cannot be trusted is left out with the reason
     * and does no harm to the others.
     *
     * @throws WeatherFileException if the file is of no known format, or a row or the header is broken
     * @throws IOException if it cannot be opened
     */
    public static List<FileYear> readYears(Path file, WeatherReadOptions options) throws IOException {
        FileText text = Spreadsheet.undo(FileText.load(file));
        String source = ", " + file.getFileName();
        return TimeResolver.years(formatOf(text).read(text), options).parallelStream()
                .map(year -> checked(year, source, file, options))
                .toList();
    }

    private static FileYear checked(TimeResolver.Year year, String source, Path file, WeatherReadOptions options) {
        try {
            HourTable table = year.rows().finish(year.findings());
            String of = table.header.format() + source + ", " + year.year();
            return new FileYear.Sound(year.year(), WeatherChecks.year(table, of, options, year.findings()));
        } catch (WeatherFileException e) {
            return new FileYear.LeftOut(year.year(), e);
        } catch (Refusal refusal) {
            return new FileYear.LeftOut(year.year(), refusal.of(file));
        }
    }

    /**
     * What a file is, in words, judged by its beginning: "a weather file (EPW)", "a file of monthly normals"; empty if it
     * is neither, or cannot be read.
     */
    public static Optional<String> kindOf(Path file) {
        try {
            FileText text = FileText.load(file);
            if (Misfit.normals(text) > 0) {
                return Optional.of("a file of monthly normals");
            }
            return FORMATS.stream()
                    .filter(format -> text.lines() >= HourOfYear.HOURS && format.recognises(text))
                    .findFirst()
                    .map(format -> "a weather file (" + format.title() + ")");
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The rows of a file in standard time, before anything is judged. */
    static HourTable table(Path file, WeatherReadOptions options, Findings findings) throws IOException {
        FileText text = Spreadsheet.undo(FileText.load(file));
        return TimeResolver.resolve(formatOf(text).read(text), options, findings);
    }

    private static WeatherFormat formatOf(FileText text) throws WeatherFileException {
        Misfit.refuse(text);
        for (WeatherFormat format : FORMATS) {
            if (format.recognises(text)) {
                return format;
            }
        }
        String start = text.line(text.first()).strip();
        throw text.error(
                text.first(),
                "",
                "\"" + start.substring(0, Math.min(40, start.length())) + "\"",
                "the beginning of "
                        + String.join(
                                ", ", FORMATS.stream().map(WeatherFormat::title).toList()),
                "Save the year in one of these formats; the plain csv is described in docs/formats.md.");
    }
}
