package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.Mounting.Back;
import dev.warmlane.collector.Mounting.OpenRack;
import dev.warmlane.collector.Mounting.WindRun;
import dev.warmlane.collector.PlateToFluid.TubeSheet;
import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingOption.RoofSide;
import dev.warmlane.study.RowSpacing;
import org.junit.jupiter.api.Test;

/** What takes many numbers is gathered by name: each lands where it belongs. */
class BuildersTest {

    private static final TestStand STAND = new TestStand(false, 1.8, 0, 4);

    @Test
    void racks() {
        OpenRack built = OpenRack.builder(20, 190, 1.4)
                .rows(4, 2.9)
                .clearanceM(0.02)
                .back(Back.BOARDED)
                .innerWind(0.8)
                .build();
        assertThat(built)
                .isEqualTo(new OpenRack(
                        new RackRows(new Rack(20, 190, 1.4, 0.02), 2.9, 4), Back.BOARDED, WindRun.CHORD, 0.8));
        assertThat(OpenRack.builder(20, 190, 1.4).build()).isEqualTo(new OpenRack(20, 190, 1.4, 1.4, 1, 0.3));
        assertThat(OpenRack.builder(2, 190, 1.4)
                        .clearanceM(0)
                        .windRun(WindRun.ROOF)
                        .build()
                        .windRun())
                .isEqualTo(WindRun.ROOF);
    }

    @Test
    void certificates() {
        AngleCoefficient slanting = new AngleCoefficient(0.08, 0.9);
        CertificateCurve built = CertificateCurve.builder(0.8, 15, STAND)
                .a2(0.02)
                .a3(3)
                .a4(0.7)
                .a6(0.01)
                .a7(0.02)
                .a8(1e-9)
                .incidence(slanting)
                .build();
        assertThat(built).isEqualTo(new CertificateCurve(0.8, 15, 0.02, 3, 0.7, 0.01, 0.02, 1e-9, slanting, STAND));
        assertThat(CertificateCurve.builder(0.8, 15, STAND).build())
                .isEqualTo(new CertificateCurve(0.8, 15, 0, 0, 0, 0, 0, 0, new MatteBlack(), STAND));
    }

    @Test
    void tubes() {
        TubeSheet laminar = TubeSheet.ofLaminarFlow(0.01, 0.008, 0.006, 0.001, 0.3);
        assertThat(laminar).isEqualTo(new TubeSheet(0.01, 0.008, 0.006, 0.001, 0.3, TubeSheet.laminarFilmWm2K(0.006)));
        assertThat(laminar.withInnerFilmWm2K(900)).isEqualTo(new TubeSheet(0.01, 0.008, 0.006, 0.001, 0.3, 900));
    }

    @Test
    void controls() {
        Schedule byDay = Schedule.daily(7, 21);
        Controller own = new Controller() {};
        assertThat(Control.withLimit(28)
                        .decidedBy(own)
                        .withOnDifferenceK(6)
                        .withOffDifferenceK(0.2)
                        .withPumping(byDay)
                        .sheddingAboveC(31))
                .isEqualTo(new Control(6, 0.2, 28, 31, byDay, own));
    }

    @Test
    void comparedRacks() {
        RowSpacing wide = new RowSpacing.FixedPitch(4);
        Rack low = new Rack(2, 170, 1.5, 0);
        MountingOption.Racks built = MountingOption.racks("a", 2, 170)
                .withRack(low)
                .withWindRun(WindRun.ROOF)
                .withSpacing(wide)
                .withAlong(RoofSide.SHORT);
        assertThat(built)
                .isEqualTo(new MountingOption.Racks(
                        "a", low, Back.OPEN, WindRun.ROOF, OpenRack.USUAL_INNER_WIND, wide, RoofSide.SHORT));
        assertThat(built.withRack(new Rack(2, 170, 1.5, 0.5)).windRun()).isEqualTo(WindRun.CHORD);
    }

    @Test
    void poolsAndArrays() {
        assertThat(Lido.POOL.withWaterEmittance(0.9).waterEmittance()).isEqualTo(0.9);
        assertThat(Lido.POOL.withWaterEmittance(0.9).withWaterEmittance(Lido.POOL.waterEmittance()))
                .isEqualTo(Lido.POOL);
        assertThat(Lido.built().build().arrays().get(0).withPanelAreaM2(4).panelAreaM2())
                .isEqualTo(4);
    }
}
