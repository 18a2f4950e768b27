package dev.warmlane.study;

import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.Installation;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.units.Dimension;
import java.util.List;

/**
 * Wind and sun at the pool within nine of ten of what a log left possible. The two are correlated: the first direction moves
 * the wind, and the sun as far as it goes with it; the second moves what of the sun is independent of the wind. Put together
 * as independent doubts they are the whole of it (Cholesky's factor of the covariance).
 *
 * @param name what it is called
 * @param wind whether it is the first direction
 */
record FittedParameter(String name, boolean wind) implements Parameter {

    static final Parameter WIND = new FittedParameter("wind at pool as fitted, sun with it", true);

    static final Parameter SUN = new FittedParameter("sun that warms the pool as fitted", false);

    @Override
    public String why() {
        return "nine of ten of what a log of the water left possible";
    }

    @Override
    public Variation in(Installation installation) {
        if (installation.fitted().isEmpty()
                || installation.pool().setting().outdoor().isEmpty()) {
            return new Variation.NotHere("nothing was fitted to a log of the water");
        }
        return new Variation.Range(
                shown(WindAndSun.of(installation)),
                end(installation, -FittedDoubt.NINE_OF_TEN),
                end(installation, FittedDoubt.NINE_OF_TEN));
    }

    private Variation.End end(Installation installation, double by) {
        FittedDoubt doubt = installation.fitted().orElseThrow();
        WindAndSun likely = WindAndSun.of(installation);
        double sunBy = wind ? doubt.correlation() : Math.sqrt(1 - doubt.correlation() * doubt.correlation());
        double windFactor = likely.windFactor() + (wind ? by * doubt.windFactorSd() : 0);
        double sunShare = likely.sunShare() + by * sunBy * doubt.sunShareSd();
        WindAndSun moved = new WindAndSun(
                Math.max(Outdoor.WIND_FACTOR.lowest(), Math.min(Outdoor.WIND_FACTOR.highest(), windFactor)),
                Math.max(0, Math.min(1, sunShare)));
        return new Variation.End(shown(moved), moved.in(installation));
    }

    private Setting shown(WindAndSun of) {
        return new Setting.Numbers(List.of(wind ? of.windFactor() : of.sunShare()), Dimension.FRACTION);
    }
}
