package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.ForecastCharts;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AlternativesBand;
import dev.warmlane.study.AlternativesStudy;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.ShadeStudy;
import dev.warmlane.study.YearsStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The report of one season. A section is a method here and a line in {@link #sections}. */
public final class ForecastReport {

    private static final String NAME = "forecast";
    private static final Set<Place> FIRST = Set.of(Place.FIRST_SHEET);
    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private final Subject subject;
    private final CommonSections common;
    private final RoofSection roof;
    private final WaterSection water;
    private final Optional<YearsStudy> years;
    private final SeasonBand band;
    private final Optional<ShadeStudy> shade;
    private final Optional<AlternativesSection> alternatives;

    private ForecastReport(Subject subject, Optional<YearsStudy> years) {
        this.years = years;
        this.subject = subject;
        this.common = new CommonSections(subject);
        this.roof = RoofSection.of(NAME, subject.installation(), subject.numbers());
        this.band = subject.bands().of(subject.installation());
        this.alternatives = AlternativesStudy.of(subject.forecast())
                .map(study -> new AlternativesSection(
                        subject, study, AlternativesBand.of(subject.forecast(), subject.bands())));
        this.shade = ShadeStudy.of(subject.forecast());
        this.water = new WaterSection(subject);
    }

    /** The report of a scenario's season. */
    public static Report of(SeasonForecast forecast, Scenario scenario) {
        return of(Subject.of(forecast, scenario));
    }

    /** The report of a season; simulates it with each doubtful input at its ends on the way. */
    public static Report of(Subject subject) {
        return of(subject, Optional.empty());
    }

    /** The same with what real years would have done beside it, where they are given. */
    public static Report of(Subject subject, Optional<YearsStudy> years) {
        ForecastReport report = new ForecastReport(subject, years);
        return new Report(
                NAME,
                subject.settings().title(),
                report.common.place(),
                subject.settings().letterhead(),
                subject.settings().notation(),
                report.sections(),
                report.data());
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        common.job(),
                        new ForecastAnswer(subject, band).section(),
                        common.lookAt(),
                        months(),
                        pool(),
                        HeatSections.collectors(subject),
                        roof.section(),
                        ShadeSection.of(subject, shade),
                        water.section(),
                        MoneySection.of(subject, band),
                        GasSection.of(subject),
                        alternatives(),
                        balance(),
                        CertaintySection.of(subject, band),
                        YearsBand.of(subject, years),
                        WorkingRangeSection.of(subject)),
                common.last(
                        years.isPresent() ? Cautions.Weather.TYPICAL_BESIDE_REAL : Cautions.Weather.TYPICAL,
                        List.of(subject.season())));
    }

    private Section alternatives() {
        return alternatives
                .map(what -> what.section()
                        .with(TECHNICAL, new Picture("alternatives", name -> Optional.of(what.chart(name)))))
                .orElseGet(() -> Section.of("What else the money could do", Place.PRINTED));
    }

    private List<Data> data() {
        SeasonForecast forecast = subject.forecast();
        List<Data> data = new ArrayList<>();
        alternatives.ifPresent(what -> data.add(new Data("alternatives", what::all)));
        MoneySection.years(subject, band).ifPresent(years -> data.add(new Data("money", () -> years)));
        data.addAll(roof.data());
        shade.ifPresent(study -> data.add(new Data("shade", () -> ShadeSection.data(subject, study))));
        data.addAll(water.data());
        data.addAll(List.of(
                new Data("weeks", () -> ForecastTables.allOfWeeks(forecast, band, subject.units())),
                new Data("months", () -> ForecastTables.allOfMonths(forecast, band, subject.units())),
                new Data("certainty", () -> CertaintySection.all(subject, band)),
                new Data("hours", () -> HourTable.of(forecast, subject.units()))));
        return data;
    }

    /** The days above it, with their doubt. */
    private Section months() {
        return Section.of("Your pool, day by day and month by month", Place.ANSWER)
                .with(
                        FIRST,
                        new Picture("season-doubt", name -> Optional.of(ForecastCharts.doubt(name, subject, band))))
                .with(ForecastTables.months(subject.forecast(), subject.numbers()));
    }

    private Section pool() {
        return PoolSection.of(subject)
                .with(
                        TECHNICAL,
                        new Picture("season-temperature", name -> Optional.of(ForecastCharts.season(name, subject))))
                .with(TECHNICAL, new Picture("temperature-duration", name -> ForecastCharts.duration(name, subject)));
    }

    private Section balance() {
        return HeatSections.balance(subject)
                .with(
                        TECHNICAL,
                        new Picture("pool-balance", name -> Optional.of(ForecastCharts.balance(name, subject))))
                .with(
                        TECHNICAL,
                        new Picture(
                                "heat-and-" + FuelWords.of(subject.season()).slug(),
                                name -> ForecastCharts.heatAndGas(name, subject)));
    }
}
