package dev.warmlane.season;

import dev.warmlane.KeptNumbers;
import dev.warmlane.SampleForecasts;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number of the summaries of the example forecasts, whatever records they stand in. */
class KeptForecastsTest {

    private static final Map<String, SeasonForecast> FORECASTS = Map.of(
            "municipal", SampleForecasts.MUNICIPAL,
            "club", SampleForecasts.CLUB,
            "southern", SampleForecasts.SOUTHERN);

    @ParameterizedTest
    @ValueSource(strings = {"municipal", "club", "southern"})
    void sumsUpAsItDid(String name) throws ReflectiveOperationException {
        // summed up anew: the sample's own may have been made before
        SeasonForecast sample = Objects.requireNonNull(FORECASTS.get(name));
        SeasonForecast forecast = SeasonForecast.of(sample.installation(), sample.forcing(), sample.weather());
        KeptNumbers kept = new KeptNumbers("forecasts/" + name);
        add(kept, "summary", forecast.summary());
        add(kept, "month", forecast.months().get(1));
        kept.add("days gained", forecast.summary().season().daysGained());
        kept.hold("what,number");
    }

    private static void add(KeptNumbers kept, String path, Object value) throws ReflectiveOperationException {
        if (value instanceof Number number) {
            kept.add(path, number.doubleValue());
        } else if (value instanceof Boolean yes) {
            kept.add(path, yes ? 1 : 0);
        } else if (value instanceof Optional<?> maybe) {
            if (maybe.isPresent()) {
                add(kept, path, maybe.get());
            } else {
                kept.add(path + " none", 0);
            }
        } else if (value instanceof OptionalDouble maybe) {
            kept.add(path + (maybe.isPresent() ? "" : " none"), maybe.orElse(0));
        } else if (value instanceof OptionalInt maybe) {
            kept.add(path + (maybe.isPresent() ? "" : " none"), maybe.orElse(0));
        } else if (value instanceof List<?> list) {
            kept.add(path + " size", list.size());
            for (int i = 0; i < list.size(); i++) {
                add(kept, path + " " + i, list.get(i));
            }
        } else if (value instanceof Record group) {
            for (RecordComponent part : group.getClass().getRecordComponents()) {
                part.getAccessor().setAccessible(true);
                add(kept, path + " " + part.getName(), part.getAccessor().invoke(group));
            }
        }
    }
}
