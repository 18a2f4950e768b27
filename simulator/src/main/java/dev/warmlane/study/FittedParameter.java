package dev.warmlane.study;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.season.Installation;
import dev.warmlane.season.OtherSeasons;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Wind, sun and sky at the pool within nine of ten of what a log left possible in its own season. The three are correlated: the
 * first direction moves the wind, and sun and sky as far as they go with it; the second moves what of the sun is independent
 * of the wind, and the sky with it; the third what is left of the sky. Put together as independent doubts they are the whole of
 * it (Cholesky's factor of the covariance). Three more move wind, sun and sky of other seasons than the log's, each in all hours
 * together, which for the sums of a long season is rather too much ({@link OtherSeasons}); what is shown of them is the hour
 * of the season that is farthest from the log.
 *
 * @param name what it is called
 * @param direction which it is
 */
record FittedParameter(String name, Direction direction) implements Parameter {

    static final List<Parameter> ALL = List.of(
            new FittedParameter("wind at pool as fitted, sun and sky with it", Direction.WIND),
            new FittedParameter("sun that warms the pool as fitted, sky with it", Direction.SUN),
            new FittedParameter("sky over the pool as fitted", Direction.SKY),
            new FittedParameter("wind at pool in other seasons than the log's", Direction.WIND_APART),
            new FittedParameter("sun that warms the pool in other seasons than the log's", Direction.SUN_APART),
            new FittedParameter("sky over the pool in other seasons than the log's", Direction.SKY_APART));

    /** Which way the doubt moves. */
    enum Direction {
        WIND,
        SUN,
        SKY,
        WIND_APART,
        SUN_APART,
        SKY_APART;

        boolean ofOtherSeasons() {
            return this == WIND_APART || this == SUN_APART || this == SKY_APART;
        }
    }

    @Override
    public String why() {
        return direction.ofOtherSeasons()
                ? "nine of ten of what was possible before the log, of the part that it does not tell of other seasons"
                : "nine of ten of what a log of the water left possible";
    }

    @Override
    public Variation in(Installation installation) {
        if (installation.fitted().isEmpty()
                || installation.pool().setting().outdoor().isEmpty()) {
            return new Variation.NotHere("nothing was fitted to a log of the water");
        }
        FittedDoubt doubt = installation.fitted().orElseThrow();
        double left = leastLeft(installation, doubt);
        if (direction.ofOtherSeasons() && left == 1) {
            return new Variation.NotHere("the pool is open within the season of the log");
        }
        return new Variation.Range(
                shown(installation, left),
                end(installation, doubt, left, -FittedDoubt.NINE_OF_TEN),
                end(installation, doubt, left, FittedDoubt.NINE_OF_TEN));
    }

    /** What is left of the log's season in the hour of the pool's season that is farthest from it. */
    private static double leastLeft(Installation installation, FittedDoubt doubt) {
        OpeningSeason season = installation.season();
        return IntStream.range(season.beginHour(), season.beginHour() + season.leadHours() + season.hours())
                .mapToDouble(hour -> doubt.seasonLeft(Math.floorMod(hour, HourOfYear.HOURS)))
                .min()
                .orElse(1);
    }

    private Variation.End end(Installation installation, FittedDoubt doubt, double left, double by) {
        Correlations together = doubt.correlations();
        WindAndSun likely = WindAndSun.of(installation);
        double wind = likely.windFactor();
        double sun = likely.sunShare();
        double sky = doubt.skyWm2();
        Spread windSpread = doubt.wind();
        Spread sunSpread = doubt.sun();
        Spread skySpread = doubt.sky();
        switch (direction) {
            case WIND -> {
                wind += by * windSpread.sd();
                sun += by * together.windSun() * sunSpread.sd();
                sky += by * together.windSky() * skySpread.sd();
            }
            case SUN -> {
                sun += by * together.sunAlone() * sunSpread.sd();
                sky += by * together.skyWithSun() * skySpread.sd();
            }
            case SKY -> sky += by * together.skyAlone() * skySpread.sd();
            case WIND_APART -> windSpread = windSpread.apart(by);
            case SUN_APART -> sunSpread = sunSpread.apart(by);
            case SKY_APART -> skySpread = skySpread.apart(by);
        }
        WindAndSun moved = new WindAndSun(Outdoor.WIND_FACTOR.nearest(wind), FittedDoubt.SUN_SHARE.nearest(sun));
        Installation with = moved.in(installation).toBuilder()
                .fitted(doubt.with(windSpread, sunSpread, FittedDoubt.SKY.nearest(sky), skySpread))
                .build();
        return new Variation.End(shown(with, left), with);
    }

    private Setting shown(Installation of, double left) {
        WindAndSun values = WindAndSun.of(of);
        FittedDoubt doubt = of.fitted().orElseThrow();
        return switch (direction) {
            case WIND -> number(values.windFactor());
            case SUN -> number(values.sunShare());
            case SKY -> sky(doubt.skyWm2());
            case WIND_APART -> number(doubt.windFactor(values.windFactor(), left));
            case SUN_APART -> number(doubt.sunShare(values.sunShare(), left));
            case SKY_APART -> sky(doubt.skyWm2(left));
        };
    }

    private static Setting number(double value) {
        return new Setting.Numbers(List.of(value), Dimension.FRACTION);
    }

    private static Setting sky(double wm2) {
        return new Setting.Numbers(List.of(wm2), Dimension.IRRADIANCE);
    }
}
