package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorHour;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.MeasuredCurve;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.pool.EvaporationCorrelation;
import dev.warmlane.report.AreaReport;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.MountingReport;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.Subject;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A report names what is one's own, so that nobody takes it for the built-in model. */
class OwnPartsInReportsTest {

    private static final String HEADING = "Not of this program";

    private static final EvaporationCorrelation BASIN = new OwnEvaporationTest.Bent(50, 80);

    private static final MeasuredCurve MAT = new MeasuredCurve() {
        @Override
        public double heatWm2(CollectorHour hour, double inletC) {
            return 0.8 * hour.irradianceWm2() - 14 * (inletC - hour.airC());
        }

        @Override
        public String source() {
            return "our test stand, May 2020";
        }
    };

    private static final FilmCorrelation.WindFit FILM = new FilmCorrelation.WindFit() {
        @Override
        public double coefficient(double windMs) {
            return 4 + 3 * windMs;
        }

        @Override
        public String source() {
            return "our wind tunnel";
        }
    };

    private static final Controller CONTROLLER = new Controller() {
        @Override
        public String source() {
            return "the lido's own timer";
        }
    };

    @Test
    void everythingBuiltInNeedsNoWord() {
        Report report = forecast(Lido.built().build(), Lido.WEATHER);
        assertThat(TextWriter.full(report)).doesNotContain(HEADING).doesNotContain("not of this program");
        assertThat(report.sections())
                .filteredOn(section -> section.heading().equals(HEADING))
                .allSatisfy(section -> assertThat(section.parts()).isEmpty());
    }

    @Test
    void eachPartIsNamedWithItsSource() {
        assertNamed(
                Lido.built().pool(Lido.POOL.withEvaporation(BASIN)).build(),
                "an evaporation correlation",
                "measured at our own basin, 2019");
        assertNamed(
                Lido.built().arrays(Lido.array(Mounting.FlatOnRoof.USUAL, MAT)).build(),
                "the collector curve of \"collectors\"",
                "our test stand, May 2020");
        assertNamed(
                Lido.built()
                        .collectorPhysics(new CollectorPhysics(SkyModel.PEREZ, FILM))
                        .build(),
                "a film correlation",
                "our wind tunnel");
        assertNamed(
                Lido.built()
                        .control(Control.withLimit(28).decidedBy(CONTROLLER))
                        .build(),
                "a controller",
                "the lido's own timer");
    }

    /** Silence about a source is told as well. */
    @Test
    void aPartWithoutASourceSaysSo() {
        FilmCorrelation.WindFit film = windMs -> 4 + 3 * windMs;
        assertNamed(
                Lido.built()
                        .pool(Lido.POOL.withEvaporation(wind -> 60 + 60 * wind))
                        .build(),
                "an evaporation correlation",
                "no source named");
        assertNamed(
                Lido.built()
                        .collectorPhysics(new CollectorPhysics(SkyModel.PEREZ, film))
                        .build(),
                "a film correlation",
                "no source named");
    }

    private static void assertNamed(Installation built, String what, String source) {
        String named = "Not the built-in model but " + what + " of the calculation's author: " + source;
        Report report = forecast(built, Lido.WEATHER);
        for (Place place : Place.values()) {
            assertThat(points(report, place)).as(place.name()).contains(named);
        }
    }

    /** What the built-in part would have stood on is not claimed in its place. */
    @Test
    void methodsAreThoseThatWereUsed() {
        String usual = TextWriter.full(forecast(Lido.built().build(), Lido.WEATHER));
        assertThat(flowing(usual))
                .contains("flat-plate equations of Duffie and Beckman")
                .contains("Cooling by wind and by still air of every face");
        String own = flowing(TextWriter.full(forecast(
                Lido.built().arrays(Lido.array(Mounting.FlatOnRoof.USUAL, MAT)).build(), Lido.WEATHER)));
        assertThat(own)
                .contains("a curve that is not of this program (our test stand, May 2020)")
                .doesNotContain("Duffie and Beckman")
                .doesNotContain("Cooling by wind and by still air");
        String film = flowing(TextWriter.full(forecast(
                Lido.built()
                        .arrays(Lido.array(Lido.RACKS, Absorber.USUAL_MAT))
                        .collectorPhysics(new CollectorPhysics(SkyModel.PEREZ, FILM))
                        .build(),
                Lido.WEATHER)));
        assertThat(film)
                .contains("Cooling of every face that is exposed by its wind (our wind tunnel)")
                .doesNotContain("Cooling by wind and by still air");
    }

    @Test
    void weatherOfAProgramIsNoFile() {
        Report report = forecast(Lido.built().build(), OwnWeatherTest.Archive.year(0));
        assertThat(points(report, Place.FIRST_SHEET))
                .contains("The weather was not read from a file but handed over by a program: an archive of one's own");
        assertThat(TextWriter.full(report))
                .contains("The weather, as it was handed over")
                .doesNotContain("The weather file")
                .doesNotContain("File: ");
    }

    @Test
    void studiesNameThemToo() {
        Installation built = Lido.built().pool(Lido.POOL.withEvaporation(BASIN)).build();
        Subject described = subject(built, Lido.WEATHER);
        MountingStudy mountings = MountingStudy.of(
                built, Lido.WEATHER, List.of(MountingOption.flat("flat"), MountingOption.racks("racks", 30, 180)));
        for (Report report : List.of(
                AreaReport.of(AreaStudy.of(built, Lido.WEATHER, new AreaRange(100, 200, 2)), described),
                MountingReport.of(mountings, Optional.empty(), described))) {
            assertThat(points(report, Place.FIRST_SHEET))
                    .contains("an evaporation correlation of the calculation's author");
        }
    }

    private static Report forecast(Installation built, WeatherYear weather) {
        return ForecastReport.of(subject(built, weather));
    }

    private static Subject subject(Installation built, WeatherYear weather) {
        return Subject.of(SeasonForecast.of(built, weather), new ReportSettings("lido", UnitSystem.METRIC));
    }

    private static String points(Report report, Place place) {
        return report.at(place).stream()
                .filter(section -> section.heading().equals(HEADING))
                .flatMap(section -> section.at(place).stream())
                .map(Object::toString)
                .reduce("", String::concat);
    }

    /** Without line breaks. */
    private static String flowing(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
