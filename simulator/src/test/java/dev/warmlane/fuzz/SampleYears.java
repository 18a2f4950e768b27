package dev.warmlane.fuzz;

import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The four invented years of the weather samples. */
final class SampleYears {

    private SampleYears() {}

    static List<WeatherYear> read() throws IOException {
        List<WeatherYear> years = new ArrayList<>();
        for (String sample : List.of("cool-coast", "warm-inland", "hot-dry", "southern-temperate")) {
            years.add(WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv")));
        }
        return years;
    }
}
