package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.CollectorMoment;
import dev.warmlane.collector.FreePlate;
import dev.warmlane.collector.PlaneLight;
import dev.warmlane.collector.WarmingCollector;
import org.junit.jupiter.api.Test;

/** A collector asked for one moment, as docs/library.md shows it. */
class OneMomentTest {

    @Test
    void certificateAndPlateAnswerForOneMoment() {
        PlaneLight light = new PlaneLight(650, 120, 30, 45); // W/m2 beam and diffuse, degrees of incidence and tilt
        CollectorMoment now = new CollectorMoment(light, 370, 24, 2.5); // W/m2 long-wave, degC air, m/s wind
        CertificateCurve certificate = CertificateCurve.plainWindBuilder(0.80, 10, new TestStand(false, 2, 0.5, 4))
                .a3(3)
                .a4(0.75)
                .a6(0.02)
                .build();
        double steady = certificate.heatAtInletWm2(now, 22, 0.03);

        FreePlate plate = new FreePlate(Absorber.USUAL_MAT, 2, 1, 0.5, 100); // m length and width, W/m2K back, kPa
        WarmingCollector warming = new WarmingCollector(plate, 20_000, 22); // J/m2K, degC to begin with
        double firstMinute = warming.step(now, 22, 0.03, 60);

        assertThat(steady).isBetween(0.6 * light.totalWm2(), 0.8 * light.totalWm2());
        assertThat(firstMinute).isPositive().isLessThan(plate.heatAtInletWm2(now, 22, 0.03) / 2);
    }
}
