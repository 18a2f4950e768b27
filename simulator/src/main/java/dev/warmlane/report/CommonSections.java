package dev.warmlane.report;

import dev.warmlane.circuit.Controller;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.season.Installation;
import dev.warmlane.season.OwnParts;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.site.Site;
import dev.warmlane.study.ArrayLayout;
import dev.warmlane.units.Measure;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sections that the report of a forecast has and those of studies have too. */
final class CommonSections {

    private static final String UNSHADED =
            "Collectors that share a surface throw no shade on one another: as much way is kept behind racks as to their own next"
                    + " row, and what shade comes farther is not counted";

    private static final String NOTHING = "Nothing: everything was given.";

    private final Subject subject;
    private final Numbers numbers;

    CommonSections(Subject subject) {
        this.subject = subject;
        this.numbers = subject.numbers();
    }

    /** Where and when the season is. */
    String place() {
        String named = subject.settings().letterhead().place();
        return (named.isEmpty() ? numbers.placeName(subject.forecast().weather().site()) : named) + ", season "
                + numbers.show(subject.installation().season().first()) + " to "
                + numbers.show(subject.installation().season().last());
    }

    /** The answer: that the seasons shown are not to be believed, or else what they say. */
    static Section answer(Numbers numbers, Stream<PeriodSummary> shown, String sentences, List<Block.Figure> figures) {
        return Section.of("In short", Place.ANSWER)
                .words(Credibility.of(numbers, shown).orElse(""), sentences)
                .with(new Block.KeyFigures(figures));
    }

    /** What is allowed but hardly meant; empty where nothing is. What only its writer can mend is not for the owner. */
    Section lookAt() {
        Section section = Section.of("To look at", Place.EVERYWHERE);
        List<String> points = LookAt.points(subject);
        List<String> toItsWriter = LookAt.toItsWriter(subject);
        section = points.isEmpty() ? section : section.with(Place.ANSWER, new Block.Points(points));
        return toItsWriter.isEmpty() ? section : section.with(Place.PRINTED, new Block.Points(toItsWriter));
    }

    /** What was built. */
    Section job() {
        Installation built = subject.installation();
        return Section.of("The job", Place.PRINTED)
                .words(
                        "Pool: " + numbers.show(Measure.AREA, built.pool().areaM2()) + ", "
                                + numbers.show(Measure.LENGTH, built.pool().depthM()) + " deep, "
                                + (built.pool().setting().outdoor().isEmpty() ? "indoor" : "outdoor")
                                + built.cover()
                                        .map(cover -> ", " + cover.name())
                                        .orElse(", no cover"),
                        "Collectors: " + numbers.show(Measure.AREA, built.collectorAreaM2()) + ", "
                                + numbers.show(
                                        100
                                                * built.collectorAreaM2()
                                                / built.pool().areaM2(),
                                        0)
                                + " % of the pool",
                        "Heater: "
                                + built.heater()
                                        .map(heater -> FuelWords.kind(heater) + ", "
                                                + numbers.show(Measure.POWER, heater.capacityKw()) + ", set to "
                                                + numbers.show(Measure.TEMPERATURE, heater.setPointC()))
                                        .orElse("none")
                                + "; collectors warm up to "
                                + numbers.show(
                                        Measure.TEMPERATURE, built.control().limitC()),
                        "Season: " + numbers.show(built.season().first()) + " to "
                                + numbers.show(built.season().last()) + ", "
                                + built.season().days() + " days",
                        weatherLine());
    }

    /** Where the weather is from, in a line. */
    String weatherLine() {
        Site site = subject.forecast().weather().site();
        return "Weather: " + numbers.place(site) + " ("
                + subject.forecast().weather().source() + ")";
    }

    /**
     * What every report ends with.
     *
     * @param shown the seasons that it shows
     */
    List<Section> last(List<PeriodSummary> shown) {
        return last(Cautions.Weather.TYPICAL, shown);
    }

    /** The same for seasons in other weather. */
    List<Section> last(Cautions.Weather weather, List<PeriodSummary> shown) {
        return List.of(
                WeatherReport.asRead(numbers, subject.forecast().weather()),
                RestsOn.of(subject),
                own(),
                assumed(),
                Section.of("Model and sources", Place.DETAIL).points(ModelSources.of(subject.installation())),
                Section.of("Cautions", Place.ANSWER)
                        .points(Cautions.of(
                                numbers, weather, shown, subject.summary().workingRange())));
    }

    /** What is not of this program, which no page may hide; empty where all of it is. */
    private Section own() {
        List<String> points = new ArrayList<>();
        for (OwnParts.Part part : OwnParts.of(subject.installation())) {
            points.add("Not the built-in model but " + part.what() + " of the calculation's author: " + part.source());
        }
        if (subject.installation().control().controller() != Controller.USUAL) {
            points.add(
                    "Limit, set point and pumping as this report names them are what that controller starts from, not"
                            + " always what it keeps");
        }
        WeatherYear weather = subject.forecast().weather();
        if (!weather.fromFile()) {
            points.add("The weather was not read from a file but handed over by a program: " + weather.source());
        }
        return Section.of("Not of this program", Place.EVERYWHERE).points(points);
    }

    /**
     * Each with where it comes from; what several collectors share stands once. The keys that would set it stand in the text,
     * which the scenario's writer has beside it, and not on the page.
     */
    private Section assumed() {
        Section section = Section.of("Assumed, because it was not given", Place.DETAIL);
        if (throwsShadeUncounted()) {
            section = section.points(List.of(UNSHADED));
        } else if (subject.assumed().isEmpty()) {
            return section.words(NOTHING);
        }
        Map<String, List<Assumption>> alike = subject.assumed().stream()
                .collect(Collectors.groupingBy(
                        one -> one.words() + " " + one.value() + one.why(), LinkedHashMap::new, Collectors.toList()));
        return alike.isEmpty()
                ? section
                : section.with(Set.of(Place.TECHNICAL), points(alike, one -> ""))
                        .with(Set.of(Place.FULL), points(alike, CommonSections::keys));
    }

    private boolean throwsShadeUncounted() {
        Installation built = subject.installation();
        return ArrayLayout.share(built)
                && built.arrays().stream()
                        .anyMatch(array -> array.mounting().racks().isPresent());
    }

    private Block.Points points(Map<String, List<Assumption>> alike, Function<List<Assumption>, String> keys) {
        return new Block.Points(alike.values().stream()
                .map(group -> {
                    Assumption first = group.get(0);
                    return first.words() + ": " + numbers.notation().numbers().decimals(first.value()) + " ("
                            + keys.apply(group) + first.why() + ")";
                })
                .toList());
    }

    /** The names of the file, for its writer. */
    private static String keys(List<Assumption> alike) {
        return alike.stream().map(one -> one.section() + " " + one.key()).collect(Collectors.joining(", ")) + "; ";
    }

    /** Sections one after the other. */
    @SafeVarargs
    static List<Section> list(List<Section>... parts) {
        List<Section> all = new ArrayList<>();
        for (List<Section> part : parts) {
            all.addAll(part);
        }
        return all;
    }
}
