package dev.warmlane.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The parts of a forecast that a page shows as the text does, with the same numbers and words. Points come unbroken.
 *
 * @param report what they are made from
 */
public record ForecastParts(ForecastReport report) {

    /** Month by month, the season below. */
    public Table months() {
        return ForecastTables.months(report.forecast(), report.units());
    }

    /** The pool with and without collectors, side by side. */
    public Table pool() {
        return PoolText.table(numbers(), report.forecast().installation(), report.summary());
    }

    /** Where the pool's heat came from and went. */
    public Table balance() {
        return HeatText.balanceTable(numbers(), report.summary().season());
    }

    /** The season of a sheltered, the likely and an exposed pool; nothing for a pool in a hall. */
    public Optional<Table> exposure() {
        return report.wind().map(band -> CertaintyText.table(numbers(), band));
    }

    /** Why the exposure has fewer than three rows; nothing where it has three. */
    public Optional<String> exposureRemark() {
        return report.wind().flatMap(CertaintyText::missing);
    }

    /** Why the season is not to be believed; nothing where it may be. */
    public Optional<String> notCredible() {
        return CredibilityText.of(numbers(), Stream.of(report.summary().season()));
    }

    /** How often the wind at the water is beyond what evaporation was measured in; nothing where it never is. */
    public Optional<String> strongWind() {
        return CertaintyText.strongWind(numbers(), report.forecast());
    }

    /** How warm the pool is on its first morning, in words after "it". */
    public Optional<String> start() {
        return StartText.of(numbers(), report.forecast());
    }

    /** What is allowed but hardly meant, in scenario and weather. */
    public List<String> lookAt() {
        return LookAtText.points(report);
    }

    /** What a typical year cannot say. */
    public String typicalYear() {
        return CertaintyText.TYPICAL_YEAR;
    }

    /** What was built. */
    public List<String> job() {
        return ForecastText.job(numbers(), report.forecast()).lines();
    }

    /** What the collectors gave. */
    public List<String> collectors() {
        return HeatText.collectors(numbers(), report.summary()).points();
    }

    /** Gas, carbon dioxide and money. */
    public List<String> gas() {
        return GasText.of(numbers(), report.summary()).points();
    }

    /** The temperatures that collectors and pipes must stand; nothing where there are none. */
    public List<String> workingRange() {
        return report.summary()
                .workingRange()
                .map(range -> SafetyText.workingRange(
                                numbers(),
                                range,
                                report.forecast().installation().season().days())
                        .points())
                .orElse(List.of());
    }

    /** What the weather file is. */
    public List<String> weather() {
        return WeatherText.file(numbers(), report.forecast().weather()).lines();
    }

    /** What was found wrong with the weather. */
    public List<String> weatherQuality() {
        return WeatherText.quality(report.forecast().weather()).points();
    }

    /** What to be careful of. */
    public List<String> cautions() {
        return SafetyText.cautions(numbers(), report.summary()).points();
    }

    private Numbers numbers() {
        return new Numbers(report.units());
    }
}
