package dev.warmlane.scenario;

import dev.warmlane.season.FittedDoubt;
import org.jspecify.annotations.Nullable;

/** Keys of the section fit, which the command fit writes. */
final class FitKeys {

    static final Key<String> LOG = Key.required("log", WordKinds.text(), "the log, and of which days");
    static final Key<Double> WIND_SD =
            Key.required("wind_factor_sd", FittedDoubt.WIND_SD, "standard deviation of wind_factor");
    static final Key<Double> SUN_SD = Key.required(
            "sun_share_sd",
            FittedDoubt.SUN_SD,
            "standard deviation of the share of the sun that warms the water, absorptance times what is not shaded");
    static final Key<Double> CORRELATION =
            Key.required("correlation", FittedDoubt.CORRELATION, "correlation of the two");
    static final Key<Double> ERROR =
            Key.required("error", FittedDoubt.ERROR, "standard deviation of what log and model still differ by");
    static final Key<Double> FADE =
            Key.required("error_fades_in", FittedDoubt.FADE, "time in which the correlation of that falls to 1/e");

    static final SectionSchema FIT = SectionSchema.optional(
            "fit",
            "how far wind_factor and the sun on the water of [pool] are known, where they were fitted to a log of its"
                    + " water: a forecast's range then stands on it",
            LOG,
            WIND_SD,
            SUN_SD,
            CORRELATION,
            ERROR,
            FADE);

    private FitKeys() {}

    /** What the section says; null where there is none. */
    static @Nullable FittedDoubt read(Section s) {
        if (!s.present()) {
            return null;
        }
        String log = s.get(LOG);
        double wind = s.get(WIND_SD);
        double sun = s.get(SUN_SD);
        double correlation = s.get(CORRELATION);
        double error = s.get(ERROR);
        double fade = s.get(FADE);
        return s.build(() -> new FittedDoubt(log, wind, sun, correlation, error, fade));
    }

    static void write(TomlText out, FittedDoubt fitted) {
        out.section("[fit]")
                .remark(
                        "wind_factor, absorptance and shaded_share of [pool] were fitted to this log; here stands how sure"
                                + " they are.")
                .remark("Remove this section where you change them by hand.")
                .key(LOG, fitted.source())
                .key(WIND_SD, fitted.windFactorSd())
                .key(SUN_SD, fitted.sunShareSd())
                .key(CORRELATION, fitted.correlation())
                .key(ERROR, fitted.errorK())
                .key(FADE, fitted.fadeHours());
    }
}
