package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.PlateFlow;
import dev.warmlane.study.LightBudget;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.UnitSystem;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Why one mounting gives more than another, of two whose light is made up so that every number can be told by heart. */
class MountingWhyTest {

    private static final Numbers METRIC = new Numbers(UnitSystem.METRIC);

    private static final MountingStudy USUAL = SampleStudies.MUNICIPAL.mountings();

    private static final String ONE = USUAL.compared().get(0).option().name();

    private static final String OTHER = USUAL.compared().get(1).option().name();

    /** Of the one every way has as many kWh/m² as its place in the list, of the other ten times as many. */
    private static MountingStudy study(double warmedByAirOne, double warmedByAirOther) {
        return study(Optional.of(light(1, warmedByAirOne)), Optional.of(light(10, warmedByAirOther)));
    }

    private static MountingStudy study(Optional<LightBudget> one, Optional<LightBudget> other) {
        List<Optional<LightBudget>> lights = List.of(one, other);
        return new MountingStudy(
                USUAL.template(),
                USUAL.weather(),
                IntStream.range(0, 2)
                        .mapToObj(i -> {
                            MountingStudy.Compared of = USUAL.compared().get(i);
                            MountingResult result = of.sameArea();
                            return new MountingStudy.Compared(
                                    of.option(),
                                    new MountingResult(
                                            result.option(),
                                            result.fit(),
                                            result.forecast(),
                                            result.season(),
                                            result.months(),
                                            lights.get(i),
                                            List.of()),
                                    of.sameRoof());
                        })
                        .toList());
    }

    private static LightBudget light(double times, double warmedByAir) {
        Map<PlateFlow, Double> heat = new EnumMap<>(PlateFlow.class);
        for (PlateFlow flow : PlateFlow.values()) {
            heat.put(flow, times * (flow.ordinal() + 1));
        }
        return new LightBudget(
                100 * times, 900 * times, 700 * times, heat, 3, warmedByAir, 5 * times, 2 * times, 24, 18, 30 + times);
    }

    private static Table table(Section section) {
        return section.at(Place.TECHNICAL).stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String words(Section section) {
        StringBuilder text = new StringBuilder();
        section.at(Place.TECHNICAL).stream()
                .filter(Block.Words.class::isInstance)
                .forEach(block -> text.append(((Block.Words) block).text()).append(' '));
        return text.toString();
    }

    private static List<String> headings(List<Section> why) {
        return why.stream().map(Section::heading).toList();
    }

    private static double number(Cell cell) {
        return ((Cell.Value) cell).value();
    }

    private static void assertDifferences(Table table, double ofEach) {
        for (int row = 0; row < table.rows().size(); row++) {
            assertThat(number(table.rows().get(row).get(1)))
                    .as(LightItem.values()[row].label())
                    .isEqualTo(ofEach * LightItem.values()[row].gained(light(1, 0)));
        }
        assertThat(number(table.totals().get(0).get(1))).isEqualTo(ofEach * (PlateFlow.USEFUL.ordinal() + 1));
    }

    @Test
    void differencesAreThoseOfTheOthersFromTheFirst() {
        Section why = MountingWhy.of(METRIC, study(0, 0), Optional.empty()).get(0);

        assertThat(words(why)).contains("against “" + ONE + "”");
        assertThat(table(why).columns()).extracting(Column::header).containsExactly("way of the heat", OTHER);
        assertThat(table(why).rows()).hasSize(LightItem.values().length - 1);
        assertDifferences(table(why), 9);
    }

    @Test
    void whoIsNamedIsSetAgainstTheOthersAndChangesTheSign() {
        Section why = MountingWhy.of(METRIC, study(0, 0), Optional.of(OTHER)).get(0);

        assertThat(words(why)).contains("against “" + OTHER + "”");
        assertThat(table(why).columns()).extracting(Column::header).containsExactly("way of the heat", ONE);
        assertDifferences(table(why), -9);
    }

    @Test
    void aNameThatIsNotThereLeavesTheFirst() {
        Section why = MountingWhy.of(METRIC, study(0, 0), Optional.of("nobody")).get(0);

        assertThat(words(why)).contains("against “" + ONE + "”");
    }

    /** What goes where is told of all of them in the order of the study, whoever they are set against. */
    @Test
    void theLightOfEveryMountingIsShown() {
        List<Section> why = MountingWhy.of(METRIC, study(0, 0), Optional.of(OTHER));

        assertThat(headings(why))
                .containsExactly("Where the difference comes from", "Where the light goes", "Films and temperatures");
        Table light = table(why.get(1));
        assertThat(light.columns()).extracting(Column::header).containsExactly("way of the heat", ONE, OTHER);
        for (int row = 0; row < light.rows().size(); row++) {
            double gained = LightItem.values()[row].gained(light(1, 0));
            assertThat(number(light.rows().get(row).get(1))).isEqualTo(gained);
            assertThat(number(light.rows().get(row).get(2))).isEqualTo(10 * gained);
        }
        assertThat(why.get(1).at(Place.TECHNICAL).stream().filter(Block.Picture.class::isInstance))
                .hasSize(1);
        assertThat(why.get(1).at(Place.BRIEF)).noneMatch(Block.Picture.class::isInstance);
        assertThat(table(why.get(2)).rows())
                .extracting(row -> row.get(0))
                .containsExactly(Cell.of(OTHER), Cell.of(ONE));
        assertThat(table(why.get(2)).rows().get(0)).contains(Cell.of(900.0 * 10), Cell.of(5.0 * 10), Cell.of(2.0 * 10));
    }

    @Test
    void thatTheAirWarmsIsSaidWhereItWarmsAnyOfThem() {
        assertThat(films(study(0, 0))).contains("never warmed").doesNotContain("the air was warmer");
        assertThat(films(study(0.5, 0))).contains("the air was warmer").doesNotContain("never warmed");
        assertThat(films(study(0, 0.5))).contains("the air was warmer").doesNotContain("never warmed");
    }

    private static String films(MountingStudy study) {
        return words(MountingWhy.of(METRIC, study, Optional.empty()).get(2));
    }

    @Test
    void aSingleMountingHasNothingToDifferFrom() {
        MountingStudy both = study(0, 0);
        MountingStudy single = new MountingStudy(
                both.template(), both.weather(), both.compared().subList(0, 1));

        assertThat(headings(MountingWhy.of(METRIC, single, Optional.empty())))
                .containsExactly("Where the light goes", "Films and temperatures");
    }

    /** A certificate does not tell one loss from another; one of them is enough to say so. */
    @Test
    void ofACertificateNothingIsTold() {
        List<Section> why = MountingWhy.of(METRIC, study(Optional.of(light(1, 0)), Optional.empty()), Optional.empty());

        assertThat(headings(why)).containsExactly("Where the difference comes from");
        assertThat(words(why.get(0))).contains("test certificate", "by its absorber");
        assertThat(why.get(0).at(Place.TECHNICAL)).noneMatch(Table.class::isInstance);
    }
}
