package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.DatesStudy.Dates;
import dev.warmlane.study.DatesStudy.Way;
import dev.warmlane.units.Estimate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The weeks that longer seasons gain and the water that they open with, with their doubt. For the weeks each doubtful input
 * is varied in today's season and in the longer ones alike, so that it is their doubt and not that of what is bought.
 * Seasons are simulated when they are first asked for. For one thread.
 */
public final class DatesBand {

    private final DatesStudy study;
    private final SeasonBands bands;
    private final Map<String, SeasonBand> known = new HashMap<>();

    /**
     * Knows nothing yet.
     *
     * @param study the study
     * @param bands of the same weather
     */
    public DatesBand(DatesStudy study, SeasonBands bands) {
        this.study = study;
        this.bands = bands;
    }

    /**
     * {@link DatesStudy#weeksGained} with its doubt, at most the weeks of the study; nothing without a heater.
     *
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public Optional<Estimate> weeksGained(Way way) {
        OptionalDouble likely = study.weeksGained(way);
        if (likely.isEmpty()) {
            return Optional.empty();
        }
        List<Estimate> alone = of(study.today()).doubts().stream()
                .map(doubt -> Estimate.around(
                        likely.getAsDouble(),
                        study.weeksGained(way, at(doubt.name(), Sensitivity::low)),
                        study.weeksGained(way, at(doubt.name(), Sensitivity::high))))
                .toList();
        return Optional.of(Estimate.combined(likely.getAsDouble(), alone).within(0, study.mostWeeks(way)));
    }

    /**
     * The water at opening with its doubt, °C.
     *
     * @param dates a season of the study
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public Estimate openingC(Dates dates) {
        // when it closes has no say in how it opens
        Dates opens =
                dates.way() == Way.LATER ? study.today() : study.of(Way.EARLIER).get(dates.weeks());
        return of(opens).openingC(dates.opening());
    }

    private Function<Dates, PeriodSummary> at(String doubt, Function<Sensitivity, Sensitivity.End> end) {
        return dates -> PairedBand.end(of(dates), doubt, end);
    }

    private SeasonBand of(Dates dates) {
        Installation today = study.installation();
        // today's season is the same on every way, and known from before by the installation itself
        return dates.weeks() == 0
                ? bands.of(today)
                : known.computeIfAbsent(
                        dates.way() + " " + dates.weeks(),
                        key -> bands.of(today.toBuilder().season(dates.dates()).build()));
    }
}
