package dev.warmlane.study;

import dev.warmlane.collector.Mounting;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.season.TemperatureSummary;
import dev.warmlane.site.Roof;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Season heat of a flat array and of racks of the same area as something changes. Safe for many threads. What is asked twice
 * is worked out once; the pool's forcing serves all. What was prepared for a wind, some 5 MB, is held as long as this is.
 */
public final class MountingDuel {

    private final TracedPair names;
    private final Installation template;
    private final SharedForcing forcing;
    private final Mounted flat;
    private final double flatKwhM2;
    private final MountingOption.Racks option;
    private final Mounted racks;
    private final Map<Asked, Heats> known = new ConcurrentHashMap<>();
    private final Map<Double, Pair> winds = new ConcurrentHashMap<>();
    private final Map<HeldAt, Heats> heldKnown = new ConcurrentHashMap<>();
    private final Map<OnRoof, Heats> roofKnown = new ConcurrentHashMap<>();

    /**
     * Puts up both.
     *
     * @param template an installation with collectors, all of them taken as one array of the first's kind
     * @param forcing of the typical year; shared with other studies of it
     * @param flat the one mounting
     * @param racks the other
     * @throws IllegalArgumentException if the rows cannot be spaced as the racks ask
     */
    public MountingDuel(
            Installation template, SharedForcing forcing, MountingOption.Flat flat, MountingOption.Racks racks) {
        this.names = new TracedPair(flat, racks);
        this.template = template;
        this.forcing = forcing;
        this.flat = mounted(flat);
        this.flatKwhM2 = this.flat.heatKwhM2();
        this.option = racks;
        this.racks = mounted(racks);
    }

    /**
     * Heat of both.
     *
     * @param flat of the flat array, kWh per m² a season
     * @param racks of the racks, kWh per m² a season
     */
    public record Heats(double flat, double racks) {

        /** By how much the flat array is ahead, kWh per m² a season; below 0 where the racks are. */
        public double margin() {
            return flat - racks;
        }

        /** The same as a share of what the lesser gives: below 0 where the racks lead, 0 where neither gives anything. */
        public double lead() {
            return flat == racks ? 0 : flat > racks ? flat / racks - 1 : 1 - racks / flat;
        }
    }

    /** The two mountings. */
    public TracedPair pair() {
        return names;
    }

    /**
     * Heat of both with the water held at a temperature, see {@link HeldPool}, in the season's own sun, sky and air, and its
     * wind along the roof made stronger or weaker in every hour alike.
     *
     * @param windRatio the roof's {@linkplain Roof#windSpeedRatio wind speed ratio}, 0 to 2
     * @param waterC temperature of the water, °C, 0 to 45
     */
    public Heats held(double windRatio, double waterC) {
        HeldAt asked = new HeldAt(windRatio, waterC);
        Heats heats = heldKnown.get(asked);
        if (heats == null) {
            Pair pair = inWind(windRatio);
            heats = new Heats(pair.flat.heldKwhM2(waterC), pair.racks.heldKwhM2(waterC));
            heldKnown.put(asked, heats);
        }
        return heats;
    }

    private record HeldAt(double windRatio, double waterC) {}

    /**
     * Heat of both on a lighter or darker roof, with more or less wind at the inner rows. Neither says anything of the flat
     * array, which lies on the roof and has no rows.
     *
     * @param albedo share of short-wave that the roof reflects, 0 to 1
     * @param innerWind wind at every row but the first over that at the first, 0.1 to 1.5
     */
    public Heats onRoof(double albedo, double innerWind) {
        OnRoof asked = new OnRoof(albedo, innerWind);
        Heats heats = roofKnown.get(asked);
        if (heats == null) {
            Installation windy = standing(rows -> rows.withInnerWind(innerWind)).toBuilder()
                    .roof(template.roof().toBuilder().albedo(albedo).build())
                    .build();
            heats = new Heats(flatKwhM2, new Mounted(windy, forcing.sheltered(windy)).heatKwhM2());
            roofKnown.put(asked, heats);
        }
        return heats;
    }

    private record OnRoof(double albedo, double innerWind) {}

    /** The installation that both are put up on. */
    Installation template() {
        return template;
    }

    /** The season of the flat array, as everything is. */
    SeasonLedger flatSeason() {
        return SeasonSimulator.simulate(flat.built, flat.forcing);
    }

    /** The weather it is in. */
    WeatherYear weather() {
        return forcing.weather();
    }

    /** Both in another wind along the roof. */
    private Pair inWind(double ratio) {
        if (ratio == template.roof().windSpeedRatio()) {
            return new Pair(flat, racks);
        }
        Pair pair = winds.get(ratio);
        if (pair == null) {
            pair = onRoof(template.roof().toBuilder().windSpeedRatio(ratio).build());
            winds.put(ratio, pair);
        }
        return pair;
    }

    private record Pair(Mounted flat, Mounted racks) {

        Heats heats() {
            return new Heats(flat.heatKwhM2(), racks.heatKwhM2());
        }
    }

    /** Heat of both where a variable has a value and everything else is as it is. */
    public Heats at(TurningVariable variable, double value) {
        Asked asked = new Asked(variable, value);
        Heats heats = known.get(asked);
        if (heats == null) {
            heats = found(variable, value);
            known.put(asked, heats);
        }
        return heats;
    }

    private record Asked(TurningVariable variable, double value) {}

    private Heats found(TurningVariable variable, double value) {
        return switch (variable) {
            case ROOF_WIND_RATIO -> inWind(value).heats();
            case ROOF_ALBEDO -> onRoof(value, option.innerWind());
            case POOL_TEMPERATURE -> new Heats(flat.heldKwhM2(value), racks.heldKwhM2(value));
            case RACK_TILT ->
                new Heats(flatKwhM2, mounted(option.withTiltDeg(value)).heatKwhM2());
            case INNER_WIND -> onRoof(template.roof().albedo(), value);
            case BOARD_U_VALUE ->
                new Heats(
                        flatKwhM2,
                        mounted(standing(rows -> rows.withBack(Mounting.Back.boarded(value))))
                                .heatKwhM2());
        };
    }

    /** Where the installation is; of the pool the season's mean with the flat array. */
    public double now(TurningVariable variable) {
        return switch (variable) {
            case ROOF_WIND_RATIO -> template.roof().windSpeedRatio();
            case ROOF_ALBEDO -> template.roof().albedo();
            case POOL_TEMPERATURE -> flat.meanWaterC();
            case RACK_TILT -> option.tiltDeg();
            case INNER_WIND -> option.innerWind();
            case BOARD_U_VALUE -> option.back().boardWm2K();
        };
    }

    /** The variables that these racks have. */
    List<TurningVariable> variables() {
        boolean oneRow = racks.built
                .arrays()
                .get(0)
                .mounting()
                .racks()
                .filter(r -> r.rows() == 1)
                .isPresent();
        return Stream.of(TurningVariable.values())
                .filter(v ->
                        v != TurningVariable.BOARD_U_VALUE || !option.back().open())
                .filter(v -> v != TurningVariable.INNER_WIND || !oneRow)
                .toList();
    }

    /** The least value that can be built: racks at a fixed pitch must be steep enough not to overlap. */
    double lowest(TurningVariable variable) {
        return variable == TurningVariable.RACK_TILT
                ? option.spacing().match(this::flattest, unshaded -> variable.from())
                : variable.from();
    }

    private double flattest(RowSpacing.FixedPitch fixed) {
        double share = fixed.pitchM() / option.chordM();
        return share < 1 ? Math.toDegrees(Math.acos(share)) : TurningVariable.RACK_TILT.from();
    }

    private Pair onRoof(Roof roof) {
        return new Pair(
                mounted(flat.built.toBuilder().roof(roof).build()),
                mounted(racks.built.toBuilder().roof(roof).build()));
    }

    /** The racks where they stand, built otherwise: neither their layout nor what water flows through them changes. */
    private Installation standing(UnaryOperator<Mounting.OpenRack> otherwise) {
        return racks.built.toBuilder()
                .arrays(racks.built.arrays().stream()
                        .map(array -> array.withMounting(
                                otherwise.apply(array.mounting().racks().orElseThrow())))
                        .toList())
                .build();
    }

    private Mounted mounted(MountingOption one) {
        return mounted(built(one));
    }

    private Installation built(MountingOption one) {
        RoofFit fit = RoofFit.ofArea(template, forcing.weather().site().latitudeDeg(), one, template.collectorAreaM2());
        return MountingStudy.mounted(template, one, fit);
    }

    private Mounted mounted(Installation built) {
        return new Mounted(built, forcing.once(built));
    }

    /** An installation with its forcing. */
    private record Mounted(Installation built, SeasonForcing forcing) {

        double heatKwhM2() {
            SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);
            return HeatBalance.of(ledger, Periods.season(ledger)).deliveredKwh() / built.collectorAreaM2();
        }

        double heldKwhM2(double waterC) {
            return HeldPool.heatKwhM2(built, forcing, waterC);
        }

        double meanWaterC() {
            SeasonLedger ledger = SeasonSimulator.simulate(built, forcing);
            return TemperatureSummary.of(ledger, Periods.season(ledger)).meanC();
        }
    }
}
