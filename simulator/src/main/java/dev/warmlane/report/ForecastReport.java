package dev.warmlane.report;

import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.ForecastCharts;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.PoolWindBand;
import dev.warmlane.study.YearsStudy;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The report of one season. A section is a method here and a line in {@link #sections}. */
public final class ForecastReport {

    private static final Set<Place> FIRST = Set.of(Place.FIRST_SHEET);
    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private final Subject subject;
    private final CommonSections common;
    private final Optional<PoolWindBand> wind;
    private final Optional<YearsStudy> years;

    private ForecastReport(Subject subject, Optional<YearsStudy> years) {
        this.years = years;
        this.subject = subject;
        this.common = new CommonSections(subject);
        this.wind = PoolWindBand.of(subject.forecast());
    }

    /** The report of a scenario's season. */
    public static Report of(SeasonForecast forecast, Scenario scenario) {
        return of(Subject.of(forecast, scenario));
    }

    /** The report of a season; simulates it for a sheltered and an exposed pool on the way. */
    public static Report of(Subject subject) {
        return of(subject, Optional.empty());
    }

    /** The same with what real years would have done beside it, where they are given. */
    public static Report of(Subject subject, Optional<YearsStudy> years) {
        ForecastReport report = new ForecastReport(subject, years);
        return new Report(
                "forecast",
                subject.settings().title(),
                report.common.place(),
                subject.settings().letterhead(),
                report.sections(),
                report.data());
    }

    private List<Section> sections() {
        return CommonSections.list(
                List.of(
                        common.job(),
                        new ForecastAnswer(subject, wind).section(),
                        common.lookAt(),
                        months(),
                        pool(),
                        HeatSections.collectors(subject),
                        GasSection.of(subject),
                        balance(),
                        CertaintySection.of(subject, wind),
                        YearsBand.of(subject, years),
                        WorkingRangeSection.of(subject)),
                common.last(List.of(subject.season())));
    }

    private List<Data> data() {
        SeasonForecast forecast = subject.forecast();
        return List.of(
                new Data("weeks", () -> ForecastTables.allOfWeeks(forecast, subject.units())),
                new Data("months", () -> ForecastTables.allOfMonths(forecast, subject.units())),
                new Data("hours", () -> HourTable.of(forecast, subject.units())));
    }

    /** The days above it: with the exposure where there is any. */
    private Section months() {
        Section months = Section.of("Your pool, day by day and month by month", Place.ANSWER)
                .with(
                        FIRST,
                        new Picture(
                                "season-exposure",
                                name -> wind.map(band -> ForecastCharts.exposure(name, subject, band))));
        return (wind.isPresent() ? months : months.with(FIRST, season()))
                .with(ForecastTables.months(subject.forecast(), subject.units()));
    }

    /** Where the first sheet shows the exposure, the range of the days stands here. */
    private Section pool() {
        Section pool = PoolSection.of(subject);
        return (wind.isPresent() ? pool.with(TECHNICAL, season()) : pool)
                .with(TECHNICAL, new Picture("temperature-duration", name -> ForecastCharts.duration(name, subject)));
    }

    private Picture season() {
        return new Picture("season-temperature", name -> Optional.of(ForecastCharts.season(name, subject)));
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
