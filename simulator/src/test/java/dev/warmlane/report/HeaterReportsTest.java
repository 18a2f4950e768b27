package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.DistrictHeat;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Schedule;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reports of pools that are not heated with gas. */
class HeaterReportsTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final Heater PUMP = new HeatPump(
            Fuel.electricity(100),
            HeatPumpRating.of(new RatedPoint(27, 27, 6, 120), new RatedPoint(10, 27, 3.5, 70)),
            5,
            25,
            Schedule.ALWAYS);
    private static final Heater OIL = new Boiler(Fuel.HEATING_OIL, 0.85, 250, 25);
    private static final Heater NETWORK = new DistrictHeat(Fuel.districtHeat(40), 250, 25, Schedule.ALWAYS);

    @ParameterizedTest
    @CsvSource({
        "pump, heat pump, electricity, bought",
        "oil, heating oil, oil, burned",
        "network, district heat, district heat, bought"
    })
    void nothingThatIsNotGasIsCalledGas(String heater, String kind, String word, String used) {
        Report report = ForecastReport.of(subject(heated(heater)));
        String text = TextWriter.full(report);
        String page = HtmlWriter.page(report);

        // the one caution that is of gas and electrical work stays
        for (String all : List.of(text, page)) {
            String said = all.replaceAll("(?s)<svg.*?</svg>", "").replace("gas and electrical work", "");
            assertThat(said.toLowerCase(Locale.ROOT)).doesNotContainPattern("\\bgas\\b");
        }
        assertThat(text)
                .contains("Heater: " + kind + ", ")
                .contains(word + " displaced")
                .containsIgnoringCase(word + " " + used);
        // what is sold by the kWh is not told twice, nor in therms
        assertThat(text.replaceAll("\\s+", " ")).doesNotContain("therms) of electricity", "therms) of district heat");
        for (Report.Data data : report.data()) {
            assertThat(CsvWriter.csv(data.table().get()).lines().findFirst().orElseThrow())
                    .doesNotContain("gas");
        }
    }

    /** Nobody is billed for electricity in therms, and heat in another unit could not be held against it. */
    @Test
    void electricityIsToldInKwhWhereFuelIsToldInTherms() {
        ReportSettings us = new ReportSettings("Heated otherwise", UnitSystem.US);
        Subject pump = subject(heated("pump")).in(us);
        Subject oil = subject(heated("oil")).in(us);
        Numbers numbers = new Numbers(UnitSystem.US_ELECTRIC);
        GasSummary.Displaced gas = pump.season().gas().displaced().orElseThrow();
        // who takes what is shown with the collectors from what is shown without finds it
        double displacedKwh = Math.rint(gas.burnedWithoutKwh()) - Math.rint(gas.burnedKwh());

        assertThat(pump.units()).isEqualTo(UnitSystem.US_ELECTRIC);
        assertThat(oil.units()).isEqualTo(UnitSystem.US);
        assertThat(TextWriter.full(ForecastReport.of(pump)).replaceAll("\\h+", " "))
                .contains(numbers.show(Measure.HEAT, displacedKwh) + " of electricity", "ft²", "°F")
                // the heat delivered is told in all units that people ask for
                .doesNotContainPattern("(?<!GJ, [0-9,]{1,9} )therms")
                .doesNotContain("kBtu/ft²");
        assertThat(TextWriter.full(ForecastReport.of(oil))).containsPattern("therms\\s\\([^)]*\\)\\sof\\sheating oil");
        for (Report.Data data : ForecastReport.of(pump).data()) {
            assertThat(CsvWriter.csv(data.table().get()).lines().findFirst().orElseThrow())
                    .doesNotContain("therms", "kbtu_per_ft2");
        }
    }

    @Test
    void anAreaStudyNamesWhatIsDisplaced() {
        Installation built = heated("oil");
        AreaStudy study = AreaStudy.of(built, SampleForecasts.MUNICIPAL.weather(), AreaRange.around(built));
        assertThat(AreaTables.all(study, UnitSystem.METRIC).columns().stream().map(Column::csvName))
                .anyMatch(name -> name.startsWith("oil_displaced"))
                .noneMatch(name -> name.contains("gas"));
    }

    /** 0.65 of the simulated amount is more than a third off, 0.8 is not. */
    @ParameterizedTest
    @CsvSource({"0.65, true", "0.8, false", "1.25, false", "1.65, true"})
    void theLastBillStandsBesideWhatIsSimulated(double billOverSimulated, boolean far) {
        SeasonForecast forecast = SeasonForecast.of(heated("oil"), SampleForecasts.MUNICIPAL.weather());
        GasSummary.Displaced gas = forecast.summary().season().gas().displaced().orElseThrow();
        double litres = Math.rint(gas.fuel().unitsForKwh(gas.burnedWithoutKwh()) * billOverSimulated);
        Installation billed = heated("oil").toBuilder()
                .lastBill(new Bill(litres, SaleUnit.LITRE, OptionalDouble.of(12_345)))
                .build();
        String text = TextWriter.full(ForecastReport.of(subject(billed))).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("The last bill was " + PLAIN.show(litres, 0) + " L of heating oil, 12,345 EUR")
                .contains(PLAIN.show(1 / billOverSimulated, 2) + " of it");
        assertThat(text.contains("They differ by more than a third")).isEqualTo(far);
    }

    @Test
    void aSmallHeatPumpTakesMoreBeforeOpeningInWaterThatTheCollectorsHaveWarmed() {
        Heater small = new HeatPump(
                Fuel.electricity(100),
                HeatPumpRating.of(new RatedPoint(27, 27, 6, 40), new RatedPoint(10, 27, 3.5, 25)),
                5,
                23,
                Schedule.ALWAYS);
        Installation pump = heated("pump");
        Installation early = pump.toBuilder()
                .heater(small)
                .season(pump.season().after(new BeforeOpening(30, 10)))
                .build();
        Subject told = subject(early);
        OpeningSummary opening = told.forecast().opening();
        double more = opening.boughtKwh() - opening.boughtWithoutKwh();

        assertThat(more).isGreaterThan(10);
        // the heat is the same: it is its coefficient of performance that falls
        assertThat(opening.waterC()).isGreaterThan(opening.waterWithoutC() + 1);
        assertThat(TextWriter.full(ForecastReport.of(told)).replaceAll("\\s+", " "))
                .contains("with the collectors, " + new Numbers(UnitSystem.METRIC).show(Measure.HEAT, more)
                        + " more than without: it works about as long in both");
        assertThat(TextWriter.full(ForecastReport.of(subject(heated("pump"))))).doesNotContain("more than without:");
    }

    private static Installation heated(String name) {
        Heater heater =
                switch (name) {
                    case "pump" -> PUMP;
                    case "oil" -> OIL;
                    default -> NETWORK;
                };
        return SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(heater)
                .prices(new Prices("EUR", 0.11, 0.28, 140))
                .build();
    }

    private static Subject subject(Installation built) {
        return Subject.of(
                SeasonForecast.of(built, SampleForecasts.MUNICIPAL.weather()),
                new ReportSettings("Heated otherwise", UnitSystem.METRIC));
    }
}
