package dev.warmlane.study;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.ImpossibleSeasonException;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.SeasonYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The season of every real year of a place, with and without collectors: what was, year by year, and how far years differ.
 * Every season begins anew, with the water it opens with; a season that runs over New Year is that of two years that follow
 * each other. A year's forcing is dropped once its season is summed up, so that memory grows by the weather alone.
 *
 * @param installation what is built
 * @param seasons the seasons in the order of their years, at least one
 * @param leftOut years without a season, with the reason
 */
public record YearsStudy(Installation installation, List<YearSeason> seasons, List<WeatherYears.LeftOut> leftOut) {

    /** Keeps its own copies of the lists. */
    public YearsStudy {
        seasons = List.copyOf(seasons);
        leftOut = List.copyOf(leftOut);
    }

    /** The study on all cores. */
    public static YearsStudy of(Installation installation, WeatherYears years) {
        return of(installation, years, Runs.onAllCores());
    }

    /**
     * Simulates every year.
     *
     * @param installation what is built
     * @param years the weather
     * @param runs how to run
     * @throws IllegalArgumentException if there is no season: it runs over New Year and no two years follow each other
     * @throws ImpossibleSeasonException if no year makes a season, as that of the first
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static YearsStudy of(Installation installation, WeatherYears years, Runs runs) {
        noSeason(installation, years).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        List<SeasonYear> cut = years.startingAt(beginHour(installation));
        List<Outcome> outcomes = runs.map(cut, year -> season(installation, year));
        List<YearSeason> seasons = new ArrayList<>();
        List<WeatherYears.LeftOut> leftOut = new ArrayList<>(years.leftOut());
        for (Outcome outcome : outcomes) {
            outcome.season.ifPresent(seasons::add);
            outcome.impossible.ifPresent(
                    e -> leftOut.add(new WeatherYears.LeftOut(outcome.label, String.valueOf(e.getMessage()))));
        }
        if (seasons.isEmpty()) {
            throw outcomes.get(0).impossible.orElseThrow();
        }
        return new YearsStudy(installation, seasons, leftOut);
    }

    /** Why years hold no season of an installation; nothing where they hold one. */
    public static Optional<String> noSeason(Installation installation, WeatherYears years) {
        return years.startingAt(beginHour(installation)).isEmpty()
                ? Optional.of(
                        "the season runs over New Year, which takes two years that follow each other, and no two of"
                                + " the years do")
                : Optional.empty();
    }

    /** How a number differs from year to year; nothing where no season has it. */
    public Optional<YearsSpread> spread(YearNumber number) {
        return YearsSpread.of(number, seasons);
    }

    /** The season in some other weather, such as that of a typical year, to be held against the real ones. */
    public YearSeason inWeather(String label, WeatherYear weather) {
        return YearSeason.of(label, weather.sun().calendarYear(0), SeasonForecast.of(installation, weather));
    }

    /**
     * How many of the seasons have less of a number than another season, one with as much counting half.
     *
     * @param number what of
     * @param other a season in other weather, which has the number
     */
    public double yearsBelow(YearNumber number, YearSeason other) {
        double value = number.of(other).orElseThrow();
        double below = 0;
        for (YearSeason season : seasons) {
            double of = number.of(season).orElseThrow();
            below += of < value ? 1 : of == value ? 0.5 : 0;
        }
        return below;
    }

    /** The years in the order of a number, the worst first, the earlier of equals first. */
    public List<YearSeason> worstFirst(YearNumber number) {
        Comparator<YearSeason> byValue =
                Comparator.comparingDouble(season -> number.of(season).orElse(Double.NaN));
        return seasons.stream()
                .sorted(number.moreIsBetter() ? byValue : byValue.reversed())
                .toList();
    }

    /**
     * Where the twelve months begin that a season is simulated in: with the calendar year where season and days of standing
     * filled lie within one, else with the day the pool is filled.
     */
    static int beginHour(Installation installation) {
        OpeningSeason season = installation.season();
        int standing = installation.startWater().match(given -> 0, filled -> filled.days() * 24);
        int before = Math.min(standing, HourOfYear.HOURS - season.hours());
        int begin = season.firstHour() - before;
        return begin >= 0 && season.firstHour() + season.hours() <= HourOfYear.HOURS
                ? 0
                : Math.floorMod(begin, HourOfYear.HOURS);
    }

    private record Outcome(String label, Optional<YearSeason> season, Optional<ImpossibleSeasonException> impossible) {}

    private static Outcome season(Installation installation, SeasonYear year) {
        try {
            YearSeason season = YearSeason.of(
                    year.label(), year.begins().calendarYear(), SeasonForecast.of(installation, year.weather()));
            return new Outcome(year.label(), Optional.of(season), Optional.empty());
        } catch (ImpossibleSeasonException e) {
            return new Outcome(year.label(), Optional.empty(), Optional.of(e));
        }
    }
}
