package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RoofStrips;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.RowShading;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The dry plates of racks against a roof and plates that are repeated until they stand still: every strip of roof with the
 * film of its own temperature, plates and neighbours at the temperature that comes out.
 */
class DryPlateTest {

    private static final double SIGMA = 5.670374419e-8;

    private final IncidenceModifier incidence = new MatteBlack();

    /** Every 29th hour goes through all hours of the day and all seasons. Within 0.3 K, as is promised. */
    @ParameterizedTest
    @CsvSource({
        "warm-inland, FIRST, 1, 0.3",
        "warm-inland, INTERIOR, 10, 0.3",
        "hot-dry, INTERIOR, 10, 0.3",
        "hot-dry, FIRST, 1, 0.05",
        "cool-coast, INTERIOR, 10, 0.05"
    })
    void areAsWarmAsTheyMakeEachOther(String sample, RowPlace place, int rows, double clearanceM) {
        WeatherYear weather = Demo.weather(sample);
        Roof roof = Demo.ROOF;
        CollectorSurroundings around = new CollectorSurroundings(weather, roof, Terrain.SUBURBAN);
        Mounting.OpenRack rack = new Mounting.OpenRack(30, 180, 2, 4, rows, clearanceM);
        Exposure exposure = new Exposures(around, incidence, 1.13)
                .rack(rack, place, e -> new PlateBalance(e, Absorber.USUAL_MAT, around.air(), 0.05));
        PlateBalance plate = new PlateBalance(exposure, Absorber.USUAL_MAT, around.air(), 0.05);
        RackRows rackRows = new RackRows(new Rack(30, 180, 2, clearanceM), 4, rows);
        RoofStrips strips = RoofStrips.below(rackRows, place);
        RowShading shading = RowShading.of(weather.sun(), rackRows);
        FaceFilm film = around.filmOfRoof(1);
        double[] lit = new double[strips.count()];
        double coldest = 100;
        double hottest = -100;
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 29) {
            double airC = weather.airTemperatureC(hour);
            double beam = weather.beamHorizontalWm2(hour);
            double diffuse = weather.globalHorizontalWm2(hour) - beam;
            if (beam > 0) {
                strips.litShares(shading.profileDeg(hour), lit);
            }
            double found = 30;
            for (int repetition = 0; repetition < 100; repetition++) {
                double black = black(found);
                double neighbour = rackRows.frontNeighbourView(place) * black;
                double front = rackRows.frontSkyView(place) * weather.skyLongWaveWm2(hour) + neighbour;
                double back = rackRows.backSkyView(place) * weather.skyLongWaveWm2(hour) + neighbour;
                for (int i = 0; i < strips.count(); i++) {
                    double light = (beam > 0 ? beam * lit[i] : 0) + diffuse * strips.skyView(i);
                    double incoming =
                            strips.skyView(i) * weather.skyLongWaveWm2(hour) + (1 - strips.skyView(i)) * black;
                    double stripC =
                            stripC(roof, film, hour, airC, (1 - roof.albedo()) * light + roof.emittance() * incoming);
                    double leaving = roof.emittance() * black(stripC) + (1 - roof.emittance()) * incoming;
                    front += strips.frontView(i) * leaving;
                    back += strips.backView(i) * leaving;
                }
                double next = plateC(exposure, plate.absorbedWm2(hour), hour, airC, front + back);
                boolean settled = Math.abs(next - found) < 1e-3;
                found = next;
                if (settled) {
                    break;
                }
            }
            assertThat(plate.stagnationC(hour)).as(HourOfYear.label(hour)).isCloseTo(found, within(0.3));
            coldest = Math.min(coldest, found);
            hottest = Math.max(hottest, found);
        }
        assertThat(hottest - coldest).as("cold nights and hot noons").isGreaterThan(50);
    }

    /** What plates do to each other adds to what the weather does: without water they go farther from 30 °C. */
    @ParameterizedTest
    @CsvSource({"warm-inland", "cool-coast", "hot-dry"})
    void aCertificatesPlatesGoFartherFromRunningWater(String sample) {
        CollectorSurroundings around = new CollectorSurroundings(Demo.weather(sample), Demo.ROOF, Terrain.SUBURBAN);
        CertificateCurve curve = new UnglazedForm2013(0.85, 0.02, 12, 5, 0.95)
                .curve(incidence, new CertificateCurve.TestStand(true, 2, 1, 5));
        CollectorArray array = new CollectorArray("rows", 100, new Mounting.OpenRack(30, 180, 2, 4, 4, 0.3), curve);
        for (CollectorForcing.Part part : CollectorForcing.parts(around, array)) {
            CertificateBalance balance = (CertificateBalance) CollectorPlaces.heat(around, array, part.exposure());
            double most = 0;
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                double standing = balance.stagnationC(hour) - 30;
                double running = balance.dryWhileRunningC(hour) - 30;
                // the strips are solved more closely for dry plates than for running water: up to 2 W/m², half a kelvin
                assertThat(standing * Math.signum(running))
                        .as(HourOfYear.label(hour))
                        .isBetween(Math.abs(running) - 0.5, 1.6 * Math.abs(running) + 0.5);
                most = Math.max(most, Math.abs(standing - running));
            }
            assertThat(most).isGreaterThan(2);
        }
    }

    /** The first row sees more of the sky: colder by night. The mean starts pumps, the worst row freezes. */
    @Test
    void theWorstRowIsToldBesideTheMean() {
        CollectorSurroundings around =
                new CollectorSurroundings(Demo.weather("warm-inland"), Demo.ROOF, Terrain.SUBURBAN);
        CollectorArray array =
                new CollectorArray("rows", 100, new Mounting.OpenRack(30, 180, 2, 4, 4, 0.3), Absorber.USUAL_MAT);
        HeatCurves curves = CollectorForcing.of(around, array).curves();
        List<HourlyHeat> rows = CollectorForcing.parts(around, array).stream()
                .map(part -> CollectorPlaces.heat(around, array, part.exposure()))
                .toList();
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 13) {
            double first = rows.get(0).stagnationC(hour);
            double inner = rows.get(1).stagnationC(hour);
            assertThat(curves.highestPlateC(hour)).isCloseTo(Math.max(first, inner), within(0.01));
            assertThat(curves.lowestPlateC(hour)).isCloseTo(Math.min(first, inner), within(0.01));
            assertThat(curves.stagnationC(hour)).isCloseTo(first / 4 + inner * 3 / 4, within(0.01));
        }
    }

    private static double black(double celsius) {
        return SIGMA * Math.pow(celsius + 273.15, 4);
    }

    private static double stripC(Roof roof, FaceFilm film, int hour, double airC, double gained) {
        double low = -60;
        double high = 120;
        for (int halving = 0; halving < 30; halving++) {
            double middle = (low + high) / 2;
            double lost = roof.emittance() * black(middle)
                    + film.coefficient(hour, middle - airC) * (middle - airC)
                    + roof.uValueWm2K() * (middle - roof.roomTemperatureC());
            low = lost < gained ? middle : low;
            high = lost < gained ? high : middle;
        }
        return low;
    }

    private static double plateC(Exposure exposure, double absorbed, int hour, double airC, double longWave) {
        FaceFilm back = Objects.requireNonNull(exposure.back);
        double low = -60;
        double high = 150;
        for (int halving = 0; halving < 40; halving++) {
            double middle = (low + high) / 2;
            double films = exposure.front.coefficient(hour, middle - airC) + back.coefficient(hour, middle - airC);
            double lost = films * (middle - airC) + 0.92 * (2 * black(middle) - longWave);
            low = lost < absorbed ? middle : low;
            high = lost < absorbed ? high : middle;
        }
        return low;
    }
}
