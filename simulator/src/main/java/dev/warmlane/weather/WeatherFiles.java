package dev.warmlane.weather;

import dev.warmlane.files.Printable;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads weather from a file: EPW, TMY3 csv, TMY2, PVGIS typical year csv or JSON, PVGIS hourly series csv, NSRDB csv,
 * Open-Meteo hourly csv, German test reference years, or the project's own plain csv, as it is or in a gz or zip archive.
 * The format is found from the content, never from the name.
 *
 * <p>Every format goes the same way: rows are put into local standard time, values that cannot be are taken out, the
 * time that irradiance belongs to is tested by closure (GHI = DHI + DNI cos z), gaps are filled if they are short,
 * humidity and the long-wave irradiance of the sky are completed. Whatever was mended or estimated is a
 * {@link WeatherFinding} of the year; what cannot be trusted is refused with a {@link WeatherFileException}.
 */
public final class WeatherFiles {

    private static final List<WeatherFormat> FORMATS = List.of(
            new PlainFormat(),
            new EpwFormat(),
            new PvgisHourlyFormat(),
            new PvgisFormat(),
            new PvgisJson(),
            new NsrdbFormat(),
            new OpenMeteoFormat(),
            new Tmy3Format(),
            new TestReferenceFormat(),
            new Tmy2Format());

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
        String source = ", " + file.getFileName();
        return TimeResolver.years(rows(file), options).parallelStream()
                .map(year -> checked(year, source, file, options))
                .toList();
    }

    /**
     * Reads the real hours of a file as they follow each other, whatever period they make, 29 February included.
     *
     * @throws WeatherFileException if the file is of no known format, is broken, has longer gaps than are to be filled, or
     *     cannot be trusted
     * @throws IOException if it cannot be opened
     */
    public static WeatherRecord readRecord(Path file, RecordOptions options) throws IOException {
        Findings findings = new Findings();
        RecordRows rows = RecordRows.of(rows(file), options, findings);
        try {
            return RecordChecks.record(
                    rows.table(), rows.start(), rows.table().header.format() + ", " + file.getFileName(), findings);
        } catch (Refusal refusal) {
            throw refusal.of(file);
        }
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
            FileText text = open(file).text();
            if (Misfit.normals(text) > 0) {
                return Optional.of("a file of monthly normals");
            }
            return FORMATS.stream()
                    .filter(format -> (text.isJson() || text.lines() >= HourOfYear.HOURS) && format.recognises(text))
                    .findFirst()
                    .map(format -> "a weather file (" + format.title() + ")");
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The rows of a file in standard time, before anything is judged. */
    static HourTable table(Path file, WeatherReadOptions options, Findings findings) throws IOException {
        return TimeResolver.resolve(rows(file), options, findings);
    }

    private static RawWeather rows(Path file) throws IOException {
        Opened opened = open(file);
        RawWeather raw = formatOf(opened.text).read(opened.text);
        if (!opened.entry.isEmpty()) {
            raw.note("read from " + Printable.quote(opened.entry) + " in the archive");
        }
        return raw;
    }

    /** The text of a file, and its name within an archive that holds several; empty where it stands alone. */
    private record Opened(FileText text, String entry) {}

    private static Opened open(Path file) throws IOException {
        byte[] bytes = FileText.bytes(file);
        int bytesAtMost = FileText.MEGABYTES_AT_MOST << 20;
        if (Unpacked.isGzip(bytes)) {
            bytes = Unpacked.gunzip(file, bytes, bytesAtMost);
        }
        if (Unpacked.isZip(bytes)) {
            return onlyOne(file, Unpacked.unzip(file, bytes, bytesAtMost));
        }
        return new Opened(Spreadsheet.undo(FileText.of(file, bytes)), "");
    }

    /** The one file of an archive that is weather; what lies beside it, such as a description, is passed over. */
    private static Opened onlyOne(Path file, List<Unpacked.Entry> entries) throws WeatherFileException {
        Misfit.refuse(file, entries);
        List<String> names = new ArrayList<>();
        FileText only = null;
        for (Unpacked.Entry entry : entries) {
            FileText text = asText(file, entry);
            if (text != null && FORMATS.stream().anyMatch(format -> format.recognises(text))) {
                only = text;
                names.add(entry.name());
            }
        }
        if (only == null || names.size() > 1) {
            throw new WeatherFileException(
                    file,
                    0,
                    "",
                    names.isEmpty()
                            ? "an archive of " + entries.size() + " files, none of them weather"
                            : "an archive of several weather files: " + String.join(", ", names),
                    "an archive of one weather file",
                    "Unpack it and name the weather file.");
        }
        return new Opened(only, names.get(0));
    }

    /** Null where it is none. */
    private static @Nullable FileText asText(Path file, Unpacked.Entry entry) {
        try {
            return Spreadsheet.undo(FileText.of(file, entry.bytes()));
        } catch (WeatherFileException e) {
            return null;
        }
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
