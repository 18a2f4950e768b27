package dev.warmlane.scenario;

import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.units.Range;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/** Keys of the section fit, which the command fit writes. */
final class FitKeys {

    static final Key<String> LOG = Key.required("log", WordKinds.text(), "the log, and of which days");
    static final Key<MonthDay> FROM = Key.required("from", WordKinds.date(), "its first day");
    static final Key<MonthDay> TO =
            Key.required("to", WordKinds.date(), "its last day; the day before the first for a log of a year or more");
    static final SpreadKeys WIND =
            new SpreadKeys("wind_factor", FittedDoubt.WIND_SD, Outdoor.WIND_FACTOR, "wind_factor");
    static final SpreadKeys SUN = new SpreadKeys(
            "sun_share",
            FittedDoubt.SUN_SD,
            FittedDoubt.SUN_SHARE,
            "the sun's share that warms the water (absorptance times what is not shaded)");
    static final Key<Double> SKY_FOUND = Key.required(
            "sky",
            FittedDoubt.SKY,
            "what the sky, or whatever else warmed the water steadily, sent beyond the long-wave of the weather");
    static final SpreadKeys SKY = new SpreadKeys("sky", FittedDoubt.SKY_SD, FittedDoubt.SKY, "sky");
    static final Key<Double> WIND_SUN =
            Key.required("wind_sun_correlation", FittedDoubt.CORRELATION, "correlation of wind and sun");
    static final Key<Double> WIND_SKY =
            Key.required("wind_sky_correlation", FittedDoubt.CORRELATION, "correlation of wind and sky");
    static final Key<Double> SUN_SKY =
            Key.required("sun_sky_correlation", FittedDoubt.CORRELATION, "correlation of sun and sky");
    static final Key<Double> ERROR =
            Key.required("error", FittedDoubt.ERROR, "standard deviation of what log and model still differ by");
    static final Key<Double> FADE =
            Key.required("error_fades_in", FittedDoubt.FADE, "time in which the correlation of that falls to 1/e");

    static final SectionSchema FIT = SectionSchema.optional(
            "fit",
            "how far wind_factor and the sun on the water of [pool], and the sky, are known, where they were fitted to a"
                    + " log of its water: a forecast and its range then stand on it",
            LOG,
            FROM,
            TO,
            WIND.sd,
            WIND.before,
            WIND.beforeSd,
            SUN.sd,
            SUN.before,
            SUN.beforeSd,
            SKY_FOUND,
            SKY.sd,
            SKY.before,
            SKY.beforeSd,
            WIND_SUN,
            WIND_SKY,
            SUN_SKY,
            ERROR,
            FADE);

    private FitKeys() {}

    /** The three keys of one doubt. */
    private record SpreadKeys(Key<Double> sd, Key<Double> before, Key<Double> beforeSd) {

        SpreadKeys(String name, Range width, Range value, String what) {
            this(
                    Key.required(name + "_sd", width, "standard deviation of " + what + " in the season of the log"),
                    Key.required(name + "_before", value, "what was taken for " + what + " before the log"),
                    Key.required(name + "_before_sd", width, "standard deviation of " + what + " before the log"));
        }

        Spread read(Section s) {
            return new Spread(s.get(sd), s.get(before), s.get(beforeSd));
        }

        void write(TomlText out, Spread spread) {
            out.key(sd, spread.sd()).key(before, spread.before()).key(beforeSd, spread.beforeSd());
        }
    }

    /** What the section says; null where there is none. */
    static @Nullable FittedDoubt read(Section s) {
        if (!s.present()) {
            return null;
        }
        String log = s.get(LOG);
        MonthDay from = s.get(FROM);
        MonthDay to = s.get(TO);
        Spread wind = WIND.read(s);
        Spread sun = SUN.read(s);
        double found = s.get(SKY_FOUND);
        Spread sky = SKY.read(s);
        double windSun = s.get(WIND_SUN);
        double windSky = s.get(WIND_SKY);
        double sunSky = s.get(SUN_SKY);
        double error = s.get(ERROR);
        double fade = s.get(FADE);
        return s.build(() -> new FittedDoubt(
                log, from, to, wind, sun, found, sky, new Correlations(windSun, windSky, sunSky), error, fade));
    }

    static void write(TomlText out, FittedDoubt fitted) {
        out.section("[fit]")
                .remark(
                        "wind_factor, absorptance and shaded_share of [pool] were fitted to this log; here stands how sure"
                                + " they are,")
                .remark("and what was taken for them before, to which other seasons than the log's return.")
                .remark("Remove this section where you change them by hand.")
                .key(LOG, fitted.source())
                .key(FROM, fitted.from())
                .key(TO, fitted.to());
        WIND.write(out, fitted.wind());
        SUN.write(out, fitted.sun());
        out.key(SKY_FOUND, fitted.skyWm2());
        SKY.write(out, fitted.sky());
        out.key(WIND_SUN, fitted.correlations().windSun())
                .key(WIND_SKY, fitted.correlations().windSky())
                .key(SUN_SKY, fitted.correlations().sunSky())
                .key(ERROR, fitted.errorK())
                .key(FADE, fitted.fadeHours());
    }
}
