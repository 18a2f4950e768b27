package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.study.LeadMap.Line;
import dev.warmlane.study.LeadMap.Place;
import dev.warmlane.study.LeadMap.Side;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.WindProfile;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BreakEvenMapTest {

    /**
     * The water is found to 0.003 K, over which the difference moves by less than 0.1 kWh/m²; an hour that begins or ends to
     * count moves it by a few hundredths.
     */
    private static final double EQUAL_KWH_M2 = 0.2;

    /** Twice what the water is found to, and what an hour that begins or ends to count moves it by. */
    private static final double WATER_K = 0.03;

    private static final double SUMS = 1e-9;

    private static final MountingOption.Flat FLAT = new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL);
    private static final MountingOption.Racks RACKS = MountingOption.racks("30° racks", 30, 180);

    private static WeatherYear weather;
    private static Installation template;
    private static MountingDuel duel;
    private static BreakEvenMap season;
    private static LeadMap map;

    @BeforeAll
    static void draw() {
        weather = Demo.weather("cool-coast");
        template = Demo.pool(1.8).heater(Demo.HEATER).build();
        duel = new MountingDuel(template, new SharedForcing(weather), FLAT, RACKS);
        season = BreakEvenMap.of(duel, new Runs(2, Progress.SILENT)).orElseThrow();
        map = season.map();
    }

    /** Worked out anew from what anybody can call, without the duel. */
    private static double heatKwhM2(MountingOption option, Place place) {
        double ratio = place.x() / season.undisturbedMs();
        RoofFit fit = RoofFit.ofArea(template, weather.site().latitudeDeg(), option, template.collectorAreaM2());
        Installation built = MountingStudy.mounted(template, option, fit).toBuilder()
                .roof(template.roof().toBuilder().windSpeedRatio(ratio).build())
                .build();
        return HeldPool.heatKwhM2(built, new SharedForcing(weather).of(built), place.y());
    }

    @Test
    void onTheLineBothGiveTheSame() {
        assertThat(map.even()).hasSize(1);
        List<Place> line = map.even().get(0).places();
        assertThat(line).hasSizeGreaterThan(10);
        assertThat(line).allSatisfy(place -> assertThat(place.heats().margin()).isCloseTo(0, within(EQUAL_KWH_M2)));
        for (Place place : List.of(line.get(1), line.get(line.size() - 2))) {
            assertThat(heatKwhM2(FLAT, place)).isCloseTo(place.heats().flat(), within(SUMS));
            assertThat(heatKwhM2(RACKS, place)).isCloseTo(place.heats().racks(), within(SUMS));
        }
    }

    @Test
    void aLineOfALeadIsWhereTheLeadIs() {
        double tolerance = EQUAL_KWH_M2 / 100;
        assertThat(places(map.flatLeads())).isNotEmpty().allSatisfy(place -> assertThat(
                        place.heats().lead())
                .isCloseTo(LeadMap.NO_LEAD_BELOW, within(tolerance)));
        assertThat(places(map.racksLead())).isNotEmpty().allSatisfy(place -> assertThat(
                        place.heats().lead())
                .isCloseTo(-LeadMap.NO_LEAD_BELOW, within(tolerance)));
    }

    private static List<Place> places(List<Line> lines) {
        return lines.stream().flatMap(line -> line.places().stream()).toList();
    }

    @Test
    void warmerWaterIsOnTheFlatSideAndColderOnThatOfTheRacks() {
        for (Place place : places(map.even())) {
            double ratio = place.x() / season.undisturbedMs();
            assertThat(duel.held(ratio, place.y() + 0.5).lead()).isPositive();
            assertThat(duel.held(ratio, place.y() - 0.5).lead()).isNegative();
        }
    }

    /** Halved by hand from end to end of the range, and by the turning points' own scan of 1 K. */
    @Test
    void whereItTurnsDoesNotDependOnTheGrid() {
        double low = 10;
        double high = 40;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            if (duel.held(1, middle).margin() < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(map.evenY()).hasSize(1);
        assertThat(map.evenY().get(0)).isCloseTo(low, within(WATER_K));
        assertThat(duel.at(TurningVariable.POOL_TEMPERATURE, map.evenY().get(0)).margin())
                .isCloseTo(0, within(EQUAL_KWH_M2));
        assertThat(map.evenX()).hasSize(1);
        assertThat(duel.held(
                                map.evenX().get(0) / season.undisturbedMs(),
                                map.here().y())
                        .margin())
                .isCloseTo(0, within(EQUAL_KWH_M2));
    }

    /** Counted anew, hour by hour, from the season's ledger and the weather. */
    @Test
    void daysAndSeasonAreThoseOfTheSeason() {
        Installation flat = MountingStudy.mounted(
                template,
                FLAT,
                RoofFit.ofArea(template, weather.site().latitudeDeg(), FLAT, template.collectorAreaM2()));
        SeasonLedger ledger = SeasonSimulator.simulate(flat, new SharedForcing(weather).of(flat));
        double profile = WindProfile.ratio(flat.terrain(), flat.roof().heightM());
        double[] sums = new double[3];
        double[] day = new double[3];
        int days = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            double kwh = Math.max(0, ledger.arrayHeatKwh(0, index));
            double[] hour = {
                kwh, kwh * profile * weather.windSpeedMs(ledger.hourOfYear(index)), kwh * ledger.waterC(index)
            };
            for (int i = 0; i < 3; i++) {
                sums[i] += hour[i];
                day[i] += hour[i];
            }
            if (index % 24 == 23) {
                if (day[0] > 0) {
                    BreakEvenMap.Day drawn = season.days().get(days++);
                    assertThat(drawn.heatKwh()).isCloseTo(day[0], within(SUMS));
                    assertThat(drawn.place().x()).isCloseTo(day[1] / day[0], within(SUMS));
                    assertThat(drawn.place().y()).isCloseTo(day[2] / day[0], within(SUMS));
                }
                Arrays.fill(day, 0);
            }
        }
        assertThat(season.days()).hasSize(days);
        assertThat(map.here().x()).isCloseTo(sums[1] / sums[0], within(SUMS));
        assertThat(map.here().y()).isCloseTo(sums[2] / sums[0], within(SUMS));
        assertThat(map.here().heats()).isEqualTo(duel.held(1, map.here().y()));
        assertThat(season.simulated()).isEqualTo(duel.at(TurningVariable.ROOF_WIND_RATIO, 1));
    }

    @Test
    void reachIsThatOfHeaterAndControl() {
        assertThat(season.reach().setPointC()).hasValue(Demo.HEATER.setPointC());
        assertThat(season.reach().limitC()).isEqualTo(template.control().limitC());
    }

    @Test
    void everyDayLiesOnOneSide() {
        assertThat(Arrays.stream(Side.values()).mapToDouble(season::shareOfHeat).sum())
                .isCloseTo(1, within(SUMS));
        assertThat(season.shareOfHeat(Side.FLAT)).isBetween(0.5, 1.0);
        assertThat(map.side(new Place(map.x().to() + 0.01, 24, map.here().heats())))
                .isEqualTo(Side.OFF_THE_MAP);
        assertThat(map.side(new Place(1, 24, new MountingDuel.Heats(101.9, 100))))
                .isEqualTo(Side.NEITHER);
        assertThat(map.side(new Place(1, 24, new MountingDuel.Heats(102, 100)))).isEqualTo(Side.FLAT);
        assertThat(map.side(new Place(1, 24, new MountingDuel.Heats(100, 103)))).isEqualTo(Side.RACKS);
        assertThat(new MountingDuel.Heats(0, 0).lead()).isZero();
    }

    /** Boarded by what lets no heat through, on a roof that lets none through: nothing is left to tell them apart. */
    @Test
    void racksLaidDownDoNotLead() {
        Installation tight = template.toBuilder()
                .arrays(Demo.FLAT.withAreaM2(20))
                .roof(template.roof().toBuilder().uValueWm2K(0).build())
                .build();
        MountingOption.Racks laid = new MountingOption.Racks(
                "laid",
                new Rack(0, 180, 2, 0),
                Mounting.Back.boarded(0),
                Mounting.WindRun.ROOF,
                1,
                new RowSpacing.FixedPitch(2),
                MountingOption.RoofSide.LONG);
        MountingDuel same = new MountingDuel(tight, new SharedForcing(weather), FLAT, laid);
        for (double ratio : new double[] {0, 1.5}) {
            for (double water : new double[] {15, 25}) {
                assertThat(Math.abs(same.held(ratio, water).lead())).isLessThan(1e-3);
            }
        }
    }
}
