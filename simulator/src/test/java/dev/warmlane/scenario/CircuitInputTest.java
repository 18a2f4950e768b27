package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.hydraulics.Manifold.Outlet;
import dev.warmlane.hydraulics.PumpCurve.Point;
import dev.warmlane.season.Installation;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pipes, panel and pump as people write them. Inch, foot, gallon and psi by NIST Special Publication 811. */
class CircuitInputTest {

    private static final String JOB = """
            [site]
            weather = "../../weather-samples/cool-coast.csv"
            [pool]
            area = "312.5 m2"
            depth = "1.8 m"
            setting = "outdoor"
            [roof]
            length = "30 m"
            width = "14 m"
            height = "6 m"
            [[collectors]]
            area = "36 m2"
            mounting = "flat"
            FLOW
            [pipes]
            inner_diameter = "59 mm"
            length = "40 m"
            PIPES
            [panel]
            tubes = 120
            tube_diameter = "5 mm"
            header_diameter = "54 mm"
            length = "3 m"
            width = "1.2 m"
            per_bank = 10
            PANEL
            [pump]
            PUMP
            """;

    @TempDir
    private Path folder;

    private Installation read(String flow, String pipes, String panel, String pump) throws IOException {
        String text = JOB.replace("FLOW", flow)
                .replace("PIPES", pipes)
                .replace("PANEL", panel)
                .replace("PUMP", pump);
        return Demos.read(text, folder).installation();
    }

    /** A psi is 6.894757 kPa and a metre of water of 25 °C 9.7777 kPa but for 0.05 %, so that 14 psi are 9.8721 m; by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    8 m3/h, 10 m        | 0.00222222 | 10
                    8 m3/h; 10 m head   | 0.00222222 | 10
                    2 L/s at 33 ft of head | 0.002   | 10.0584
                    35 gal/min, 14 psi  | 0.00220815 | 9.8721
                    8 m3/h, 100 kPa     | 0.00222222 | 10.2274
                    8 m3/h, 1 bar       | 0.00222222 | 10.2274
                    8 m3/h, 10 mH2O     | 0.00222222 | 10
                    """)
    void aPointOfACurveIsAFlowAndAHead(String point, double flowM3S, double headM) throws IOException {
        Installation built = read("flow = \"2 m3/h\"", "", "", "curve = [\"0 m3/h, 40 m\", \"" + point + "\"]");
        Point read = built.hydraulics()
                .orElseThrow()
                .pump()
                .curve()
                .orElseThrow()
                .points()
                .get(1);
        assertThat(read.flowM3S()).isCloseTo(flowM3S, within(1e-7));
        assertThat(read.headM()).isCloseTo(headM, within(5e-4 * headM));
    }

    @Test
    void lengthsAreUnderstoodInInchesAndFeet() throws IOException {
        Hydraulics told = read(
                        "flow = \"6 m3/h\"",
                        "lift = \"18 ft\"\nouter_diameter = \"2 1/2 in\"\nbanks = \"reversed\"\nreturn = \"open\"",
                        "connection = \"same end\"",
                        "")
                .hydraulics()
                .orElseThrow();
        assertThat(told.lift().heightM()).isCloseTo(5.4864, within(1e-12));
        assertThat(told.lift().returnsFull()).isFalse();
        assertThat(told.pipe().coat().orElseThrow().outerM()).isCloseTo(0.0635, within(1e-12));
        assertThat(told.banks()).isEqualTo(Outlet.FAR_END);
        assertThat(told.panel().outlet()).isEqualTo(Outlet.SAME_END);
    }

    @Test
    void aPumpSetsTheFlowThatNobodySays() throws IOException {
        String curve = "curve = [\"0 m3/h, 10 m\", \"20 m3/h, 2 m\"]";
        Installation pumps = read("", "", "", curve);
        Installation own = read("flow = \"6 m3/h\"", "", "", curve);
        assertThat(own.arrays().get(0).flowKgSM2()).isCloseTo(6000.0 / 3600 / 36, within(1e-12));
        assertThat(pumps.arrays().get(0).flowKgSM2())
                .isGreaterThan(own.arrays().get(0).flowKgSM2());
        assertThat(pumps.pipes().pumpPowerW()).isPositive();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    diameter = "60 mm"     | give inner_diameter, and outer_diameter for the heat loss
                    height = "6 m"         | is called lift
                    banks = "balanced"     | did you mean "reversed"?
                    return = "siphon"      | did you mean "full"?
                    """)
    void otherWordsAreTold(String line, String message) {
        ScenarioException found = catchThrowableOfType(ScenarioException.class, () -> read("", line, "", ""));
        assertThat(found).hasMessageContaining(message);
    }

    @Test
    void aPanelMayBeMeasuredInsteadOfDescribed() throws IOException {
        String measured = "pressure_drop = [\"0.1 L/s, 1 kPa\", \"0.2 L/s, 3 kPa\"]";
        String text = JOB.replace("FLOW", "flow = \"6 m3/h\"")
                .replace("PIPES", "")
                .replace("PUMP", "")
                .replace("tubes = 120\ntube_diameter = \"5 mm\"", measured)
                .replace("PANEL", "");
        Installation built = Demos.read(text, folder).installation();
        // by hand: 3 kPa at 0.2 L/s in 3 m of panel is 2 kPa in 2 m
        assertThat(built.hydraulics()
                        .orElseThrow()
                        .panel()
                        .inside()
                        .panel(2, Hydraulics.WATER)
                        .dropPa(0.2 * Hydraulics.WATER.densityKgM3() / 1000))
                .isCloseTo(2000, within(1e-6));
        ScenarioException both =
                catchThrowableOfType(ScenarioException.class, () -> read("flow = \"6 m3/h\"", "", measured, ""));
        assertThat(both).hasMessageContaining("not allowed with pressure_drop");
    }

    @Test
    void aFlowThatThePumpCannotGiveIsRefused() {
        ScenarioException found = catchThrowableOfType(
                ScenarioException.class,
                () -> read("flow = \"9 m3/h\"", "", "", "curve = [\"0 m3/h, 1 m\", \"20 m3/h, 0.1 m\"]"));
        assertThat(found).hasMessageContaining("the pump gives").hasMessageContaining("leave out the flow");
    }
}
