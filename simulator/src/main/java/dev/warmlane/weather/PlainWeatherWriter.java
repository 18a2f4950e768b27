package dev.warmlane.weather;

import dev.warmlane.files.FileSet;
import dev.warmlane.files.Printable;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a year as the project's own plain csv, which {@link WeatherFiles} reads back. */
public final class PlainWeatherWriter {

    private static final String COLUMNS = "year,month,day,hour,global W/m2,direct W/m2,diffuse W/m2,"
            + "sky long-wave W/m2,air degC,dew point degC,pressure kPa,wind m/s\n";

    private static final Pattern FORMULA = Pattern.compile("([,;]\\s*)(?=[=+@-])");

    private PlainWeatherWriter() {}

    /**
     * Writes the file whole or not at all: under another name first, then moved into place. A file that is there is
     * replaced. Values are rounded to three decimals.
     *
     * @throws IOException if it cannot be written
     */
    public static void write(WeatherYear weather, Path file) throws IOException {
        Path target = file.toAbsolutePath().normalize();
        Path folder = target.getParent();
        Path name = target.getFileName();
        if (folder == null || name == null) {
            throw new IOException("not a file name: " + file);
        }
        if (Files.isDirectory(target)) {
            throw new IOException(file + " is a folder; remove it or choose another output");
        }
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        new FileSet()
                .add(name.toString(), text(weather))
                .write(file.getParent() == null ? Path.of(".") : file.getParent());
    }

    private static String text(WeatherYear weather) {
        StringBuilder text = new StringBuilder(700_000);
        header(text, weather);
        text.append(COLUMNS);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            text.append(weather.sun().calendarYear(hour))
                    .append(',')
                    .append(HourOfYear.monthOf(hour))
                    .append(',')
                    .append(HourOfYear.dayOfMonth(hour))
                    .append(',')
                    .append(HourOfYear.hourOfDay(hour));
            cell(text, weather.globalHorizontalWm2(hour));
            cell(text, weather.directNormalWm2(hour));
            cell(text, weather.diffuseHorizontalWm2(hour));
            cell(text, weather.skyLongWaveWm2(hour));
            cell(text, weather.airTemperatureC(hour));
            cell(text, weather.dewPointC(hour));
            cell(text, weather.pressureKpa(hour));
            cell(text, weather.windSpeedMs(hour));
            text.append('\n');
        }
        return text.toString();
    }

    private static void header(StringBuilder text, WeatherYear weather) {
        Site site = weather.site();
        text.append(PlainFormat.FIRST_LINE).append('\n');
        line(text, PlainFormat.NAME, outside(site.name()));
        line(text, PlainFormat.SOURCE, outside(weather.source()));
        line(text, PlainFormat.LATITUDE, Double.toString(site.latitudeDeg()));
        line(text, PlainFormat.LONGITUDE, Double.toString(site.longitudeDeg()));
        line(text, PlainFormat.ELEVATION, Double.toString(site.elevationM()));
        line(text, PlainFormat.UTC_OFFSET, Double.toString(site.utcOffsetHours()));
        line(text, PlainFormat.IRRADIANCE, weather.sun().isHourlyMean() ? PlainFormat.MEAN : PlainFormat.INSTANT);
        // months with a time of their own are found again by whoever reads the file
        line(text, PlainFormat.CENTRE, number(weather.sun().usualOffsetHours(), 4));
        line(
                text,
                PlainFormat.LONG_WAVE,
                weather.longWaveOrigin().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** Words from outside on one line; a spreadsheet splits it at its separator and must not find formulas. */
    private static String outside(String words) {
        return FORMULA.matcher(Printable.line(words.replaceAll("\\R", " "))).replaceAll("$1'");
    }

    private static void line(StringBuilder text, String key, String value) {
        text.append("# ").append(key).append(": ").append(value).append('\n');
    }

    private static void cell(StringBuilder text, double value) {
        text.append(',').append(number(value, 3));
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
