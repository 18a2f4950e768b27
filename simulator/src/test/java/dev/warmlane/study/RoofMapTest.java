package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The map against seasons that are simulated without it. */
class RoofMapTest {

    /** Twice a thousandth of the range of the inner wind, by how much the racks' heat falls with it. */
    private static final double EQUAL_KWH_M2 = 0.4;

    private static final double SUMS = 1e-9;

    private static final MountingOption.Flat FLAT = new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL);
    private static final MountingOption.Racks RACKS = MountingOption.racks("30° racks", 30, 180);

    private static WeatherYear weather;
    private static Installation template;
    private static LeadMap map;

    @BeforeAll
    static void draw() {
        weather = Demo.weather("cool-coast");
        template = Demo.pool(1.8).heater(Demo.HEATER).build();
        map = RoofMap.of(
                        new MountingDuel(template, new SharedForcing(weather), FLAT, RACKS),
                        new Runs(2, Progress.SILENT))
                .orElseThrow();
    }

    /** Worked out anew, without the duel. */
    private static double heatKwhM2(MountingOption option, double albedo) {
        RoofFit fit = RoofFit.ofArea(template, weather.site().latitudeDeg(), option, template.collectorAreaM2());
        Installation built = MountingStudy.mounted(template, option, fit).toBuilder()
                .roof(template.roof().toBuilder().albedo(albedo).build())
                .build();
        SeasonLedger ledger = SeasonSimulator.simulate(built, new SharedForcing(weather).of(built));
        return HeatBalance.of(ledger, Periods.season(ledger)).deliveredKwh() / built.collectorAreaM2();
    }

    /** The line, where a season is simulated on it, and a kilowatt-hour to either side of it. */
    @Test
    void onTheLineBothGiveTheSame() {
        assertThat(map.even()).hasSize(1);
        List<Place> line = map.even().get(0).places();
        assertThat(line).hasSizeGreaterThanOrEqualTo(RoofMap.COLUMNS);
        assertThat(line).allSatisfy(place -> assertThat(place.heats().margin()).isCloseTo(0, within(EQUAL_KWH_M2)));
        Place middle = line.get(line.size() / 2);
        assertThat(heatKwhM2(FLAT, middle.x())).isCloseTo(middle.heats().flat(), within(SUMS));
        assertThat(heatKwhM2(RACKS.withInnerWind(middle.y()), middle.x()))
                .isCloseTo(middle.heats().racks(), within(SUMS));
    }

    @Test
    void theRoofAsDescribedIsTheSimulatedOne() {
        assertThat(map.here().x()).isEqualTo(template.roof().albedo());
        assertThat(map.here().y()).isEqualTo(RACKS.innerWind());
        assertThat(map.here().heats().racks())
                .isCloseTo(heatKwhM2(RACKS, template.roof().albedo()), within(SUMS));
    }

    /** A lighter roof and calmer rows help racks, and the line of a lead lies on the side of who leads. */
    @Test
    void racksGainWithLightAndShelter() {
        for (Place place : map.scanned()) {
            for (Place other : map.scanned()) {
                if (other.x() >= place.x() && other.y() <= place.y() && !other.equals(place)) {
                    assertThat(other.heats().racks())
                            .isGreaterThan(place.heats().racks());
                }
            }
        }
        double even = map.evenY().get(0);
        assertThat(windOf(map.flatLeads())).isGreaterThan(windOf(map.even()));
        assertThat(windOf(map.racksLead())).isLessThan(windOf(map.even()));
        assertThat(even).isBetween(0.3, 1.2);
    }

    /** Of the first albedo that a line meets. */
    private static double windOf(List<Line> line) {
        return line.get(0).places().stream()
                .filter(place -> place.x() == template.roof().albedo())
                .findFirst()
                .orElseThrow()
                .y();
    }

    /** The lines of a lead are read off a curve: a season simulated on one has that lead to a twentieth of it. */
    @Test
    void aLineOfALeadIsWhereTheLeadIs() {
        Place on = map.flatLeads().get(0).places().get(1);
        double racks = heatKwhM2(RACKS.withInnerWind(on.y()), on.x());

        assertThat(on.heats().flat() / racks - 1).isCloseTo(LeadMap.NO_LEAD_BELOW, within(0.001));
    }

    @Test
    void oneRowHasNoInnerOnes() {
        Installation few = template.toBuilder()
                .arrays(List.of(template.arrays().get(0).withAreaM2(20)))
                .build();

        assertThat(RoofMap.of(new MountingDuel(few, new SharedForcing(weather), FLAT, RACKS), Runs.onAllCores()))
                .isEmpty();
    }
}
