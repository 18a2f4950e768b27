package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.pool.Flow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seasons of certificates whose loss grows with temperature: no heat from nowhere. */
class BentCertificateTest {

    /** Rounding of 3672 hours. */
    private static final double CLOSES_KWH = 1e-6;

    @ParameterizedTest
    @CsvSource({
        "warm-inland, 12, 1, 2, 0",
        "cool-coast, 12, 1, 2, 0",
        "hot-dry, 8, 0.2, 1, 1e-5",
        "cool-coast, 60, 1, 19, 1e-5"
    })
    void giveNoMoreThanTheirStraightPart(String sample, double a1, double a2, double a3, double a8) {
        SeasonForecast straight = season(sample, a1, 0, a3, 0);
        SeasonForecast bent = season(sample, a1, a2, a3, a8);
        double stored = 0;
        double all = 0;
        for (int index = 0; index < bent.with().hours(); index++) {
            stored += bent.with().storedJm2(index)
                    / 3.6e6
                    * bent.installation().pool().areaM2();
            if (bent.with().runShare(0, index) > 0) {
                assertThat(bent.with().outletC(0, index))
                        .isLessThan(bent.forcing()
                                        .collectors()
                                        .get(0)
                                        .curves()
                                        .stagnationC(bent.with().hourOfYear(index))
                                + 1e-6);
            }
        }
        for (Flow flow : Flow.values()) {
            all += bent.with().heatKwh(flow, Periods.season(bent.with()));
        }
        assertThat(all).isCloseTo(stored, within(CLOSES_KWH));
        assertThat(heat(bent)).isBetween(0.1 * heat(straight), heat(straight));
    }

    private static double heat(SeasonForecast forecast) {
        return forecast.with().heatKwh(Flow.COLLECTORS, Periods.season(forecast.with()));
    }

    private static SeasonForecast season(String sample, double a1, double a2, double a3, double a8) {
        CertificateCurve curve = new CertificateCurve(
                0.8, a1, a2, a3, 0.7, 0.01, 0, a8, new MatteBlack(), new TestStand(false, 2, 0, 5));
        return SeasonForecast.of(
                Demo.pool(1.8).arrays(Demo.FLAT.withModel(curve)).build(), Demo.weather(sample));
    }
}
