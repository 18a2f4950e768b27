package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;

/** The lines of a sound EPW file to put faults into, and what is asked of a reader that meets them. */
abstract class EpwFaults {

    /** Line of an EPW file that holds the first hour of the year. */
    static final int FIRST = 9;

    static final int DRY_BULB = 7;
    static final int DEW_POINT = 8;
    static final int HUMIDITY = 9;
    static final int INFRARED = 13;
    static final int GLOBAL = 14;
    static final int DIRECT = 15;
    static final int DIFFUSE = 16;
    static final int WIND = 22;

    /** Noon in July. */
    static final int NOON = HourOfYear.of(7, 14, 12);

    @TempDir
    Path folder;

    final InventedYear year = InventedYear.sound();
    final List<String> lines = year.epw();

    /** Sets cells of hours, counted from the start of the year. */
    void set(int from, int to, String value, int... cells) {
        for (int h = from; h < to; h++) {
            for (int cell : cells) {
                Breakage.set(lines, FIRST + h, cell, value);
            }
        }
    }

    void refused(String... words) {
        assertThatThrownBy(() -> Breakage.read(folder, lines))
                .isInstanceOf(WeatherFileException.class)
                .satisfies(e -> assertThat(e.getMessage()).contains(words));
    }

    static void expect(WeatherYear read, Kind kind, int line, String... words) {
        assertThat(read.findings()).anySatisfy(finding -> {
            assertThat(finding.kind()).isEqualTo(kind);
            assertThat(finding.line()).isEqualTo(line);
            assertThat(finding.message()).contains(words);
        });
    }
}
