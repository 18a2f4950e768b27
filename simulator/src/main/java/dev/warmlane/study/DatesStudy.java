package dev.warmlane.study;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A pool that opens some weeks earlier, closes some weeks later, or both, with its collectors and without: what it opens
 * with, what is bought for its heater, and how many weeks it gains for what today's season takes without collectors.
 *
 * @param installation what is built, with the season of today
 * @param dates the seasons, by way and weeks; the season of today is the first of each way
 */
public record DatesStudy(Installation installation, List<Dates> dates) {

    /** The most weeks on either side; own choice. */
    public static final int MOST_WEEKS = 20;

    /** Weeks gone through unless it is said; own choice. */
    public static final int USUAL_WEEKS = 6;

    /** Keeps its own copy of the list. */
    public DatesStudy {
        dates = List.copyOf(dates);
    }

    /** Which end of the season moves. */
    public enum Way {
        /** It opens earlier. */
        EARLIER("open earlier"),
        /** It closes later. */
        LATER("close later"),
        /** It opens earlier and closes later by as many weeks. */
        BOTH("both");

        private final String label;

        Way(String label) {
            this.label = label;
        }

        /** How many ends of the season move. */
        int ends() {
            return this == BOTH ? 2 : 1;
        }

        /** The words for it in tables and charts. */
        public String label() {
            return label;
        }
    }

    /**
     * A season.
     *
     * @param way which end moves
     * @param weeks by how many weeks each end that moves
     * @param dates when it opens and closes
     * @param season the season, with the collectors and without
     * @param opening how the pool opens
     */
    public record Dates(Way way, int weeks, OpeningSeason dates, PeriodSummary season, OpeningSummary opening) {

        /** What is bought for the heater with the collectors, kWh; nothing without a heater. */
        public OptionalDouble boughtKwh() {
            return season.gas().displaced().stream()
                    .mapToDouble(GasSummary.Displaced::burnedKwh)
                    .findFirst();
        }

        /** The same without collectors, kWh. */
        public OptionalDouble boughtWithoutKwh() {
            return season.gas().displaced().stream()
                    .mapToDouble(GasSummary.Displaced::burnedWithoutKwh)
                    .findFirst();
        }
    }

    /**
     * Simulates every season. A way ends where the pool would no longer close, or would open before what runs before its
     * opening has had room.
     *
     * @param installation what is built
     * @param weeks the most weeks on either side, 1 to {@value #MOST_WEEKS}
     * @param forcing of the weather; shared with other studies of it
     * @param runs how to run
     */
    public static DatesStudy of(Installation installation, int weeks, SharedForcing forcing, Runs runs) {
        Checks.within("weeks", weeks, 1, MOST_WEEKS, "");
        List<Plan> plans = new ArrayList<>();
        for (Way way : Way.values()) {
            for (int step = 0; step <= weeks && fits(installation.season(), way, step); step++) {
                plans.add(new Plan(way, step, moved(installation.season(), way, step)));
            }
        }
        return new DatesStudy(installation, runs.map(plans, plan -> plan.simulated(installation, forcing)));
    }

    private static boolean fits(OpeningSeason today, Way way, int weeks) {
        int days = today.days() + today.before().days() + 7 * weeks * way.ends();
        return weeks == 0 || days < HourOfYear.DAYS;
    }

    /** The season with its ends moved. */
    static OpeningSeason moved(OpeningSeason today, Way way, int weeks) {
        int hours = 7 * 24 * weeks;
        int first = way == Way.LATER ? 0 : hours;
        int last = way == Way.EARLIER ? 0 : hours;
        return new OpeningSeason(
                HourOfYear.dateOf(Math.floorMod(HourOfYear.startOf(today.first()) - first, HourOfYear.HOURS)),
                HourOfYear.dateOf(Math.floorMod(HourOfYear.startOf(today.last()) + last, HourOfYear.HOURS)),
                today.openHours(),
                today.before());
    }

    /** The seasons of one way, that of today first. */
    public List<Dates> of(Way way) {
        return dates.stream().filter(d -> d.way == way).toList();
    }

    /** The season of today. */
    public Dates today() {
        return dates.get(0);
    }

    /**
     * Weeks gained on the way at what is bought today without collectors: with the collectors the season may be so much
     * longer until as much is bought for it, straight between the weeks simulated. Both ends count where both move. 0
     * where the collectors save nothing, and all the weeks of the study where not even they take as much; nothing without a heater.
     */
    public OptionalDouble weeksGained(Way way) {
        return today().boughtWithoutKwh().isPresent()
                ? OptionalDouble.of(weeksGained(way, Dates::season))
                : OptionalDouble.empty();
    }

    /**
     * The same where the seasons go otherwise than described.
     *
     * @param gone how each went; asked from that of today on, up to the one that takes too much
     */
    double weeksGained(Way way, Function<Dates, PeriodSummary> gone) {
        List<Dates> seasons = of(way);
        GasSummary.Displaced today = bought(gone.apply(seasons.get(0)));
        double may = today.burnedWithoutKwh();
        double before = today.burnedKwh();
        for (Dates season : seasons) {
            double bought = bought(gone.apply(season)).burnedKwh();
            if (bought > may) {
                double into = season.weeks == 0 ? 0 : (may - before) / (bought - before);
                return way.ends() * Math.max(0, season.weeks - 1 + into);
            }
            before = bought;
        }
        return mostWeeks(way);
    }

    private static GasSummary.Displaced bought(PeriodSummary season) {
        return season.gas().displaced().orElseThrow();
    }

    /** The most weeks that a way can be found to gain, both ends counted where both move. */
    public double mostWeeks(Way way) {
        List<Dates> seasons = of(way);
        return (double) way.ends() * seasons.get(seasons.size() - 1).weeks;
    }

    /** Whether a way may gain more weeks than were simulated. */
    public boolean endsOpen(Way way) {
        List<Dates> seasons = of(way);
        OptionalDouble last = seasons.get(seasons.size() - 1).boughtKwh();
        return last.isPresent()
                && last.getAsDouble() <= today().boughtWithoutKwh().orElseThrow();
    }

    private record Plan(Way way, int weeks, OpeningSeason dates) {

        Dates simulated(Installation installation, SharedForcing forcing) {
            Installation built = installation.toBuilder().season(dates).build();
            SeasonForecast forecast = SeasonForecast.of(built, forcing.of(built), forcing.weather());
            return new Dates(
                    way, weeks, dates, PeriodSummary.of(forecast, Periods.season(forecast.with())), forecast.opening());
        }
    }
}
