package dev.warmlane.collector;

import dev.warmlane.KeptNumbers;
import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.collector.Mounting.Back;
import dev.warmlane.collector.Mounting.FlatOnRoof;
import dev.warmlane.collector.Mounting.FlushOnPitchedRoof;
import dev.warmlane.collector.Mounting.OpenRack;
import dev.warmlane.collector.Mounting.WindRun;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Heat and dry plates of every mounting with absorber and certificate, in hours spread over a year. */
class KeptCollectorsTest {

    /** A number that shares no factor with 24: every hour of the day has its turn. */
    private static final int EVERY = 461;

    private static final CertificateCurve CERTIFICATE = CertificateCurve.builder(0.85, 20, new TestStand(true, 2, 1, 4))
            .a2(0.05)
            .a3(4)
            .a4(0.75)
            .a6(0.015)
            .a7(0.015)
            .build();

    private static final WeatherYear WEATHER = Demo.weather("warm-inland");

    @ParameterizedTest
    @MethodSource("names")
    void givesTheHeatThatItGave(String name) {
        CollectorForcing forcing = CollectorForcing.of(
                new CollectorSurroundings(WEATHER, Demo.ROOF, Terrain.SUBURBAN),
                Objects.requireNonNull(arrays().get(name)));
        HeatCurves curves = forcing.curves();
        KeptNumbers kept = new KeptNumbers("collectors/" + name);
        PlateFlows flows = new PlateFlows();
        for (int hour = 0; hour < HourOfYear.HOURS; hour += EVERY) {
            int now = hour;
            forcing.account().ifPresent(account -> {
                account.at(now, 24, flows);
                kept.add("plate " + HourOfYear.label(now), numbers(flows));
            });
            kept.add(
                    HourOfYear.label(hour),
                    curves.heatWm2(hour, 22),
                    curves.heatWm2(hour, 31),
                    curves.stagnationC(hour),
                    curves.highestPlateC(hour),
                    curves.lowestPlateC(hour),
                    forcing.irradianceWm2(hour));
        }
        kept.add("daylight hours outside the tested wind", forcing.hoursOutsideTest());
        kept.hold("hour,heat at 22 degC W/m2,at 31 degC,dry plate degC,hottest row,coldest row,irradiance W/m2");
    }

    private static double[] numbers(PlateFlows flows) {
        return DoubleStream.concat(
                        Arrays.stream(PlateFlow.values()).mapToDouble(flows::wm2),
                        DoubleStream.of(
                                flows.irradianceWm2(), flows.filmFrontWm2K(), flows.filmBackWm2K(), flows.plateC()))
                .toArray();
    }

    static Set<String> names() {
        return arrays().keySet();
    }

    private static Map<String, CollectorArray> arrays() {
        OpenRack rows = OpenRack.builder(30, 195, 2)
                .rows(4, 4)
                .clearanceM(0.3)
                .innerWind(0.8)
                .build();
        Map<String, Mounting> mountings = new LinkedHashMap<>();
        mountings.put("flat", FlatOnRoof.USUAL);
        mountings.put("rack", OpenRack.builder(30, 160, 2).clearanceM(0.3).build());
        mountings.put("rows", rows);
        mountings.put(
                "boarded",
                OpenRack.builder(30, 195, 2)
                        .rows(4, 4)
                        .clearanceM(0.3)
                        .back(Back.BOARDED)
                        .build());
        mountings.put(
                "low",
                OpenRack.builder(3, 180, 2)
                        .clearanceM(0.05)
                        .windRun(WindRun.ROOF)
                        .build());
        mountings.put("pitched", new FlushOnPitchedRoof(25, 200, 6, 0.005));
        Map<String, CollectorArray> arrays = new LinkedHashMap<>();
        mountings.forEach((name, mounting) -> {
            arrays.put(name + " absorber", new CollectorArray(name, 100, mounting, Absorber.USUAL_MAT));
            arrays.put(name + " certificate", new CollectorArray(name, 100, mounting, CERTIFICATE));
        });
        arrays.put(
                "flat certificate tested closed",
                new CollectorArray(
                        "flat",
                        100,
                        FlatOnRoof.USUAL,
                        CERTIFICATE.withTest(CERTIFICATE.test().withBackOpen(false))));
        arrays.put(
                "rows certificate tested closed",
                new CollectorArray(
                        "rows",
                        100,
                        rows,
                        CERTIFICATE.withTest(CERTIFICATE.test().withBackOpen(false))));
        return arrays;
    }
}
