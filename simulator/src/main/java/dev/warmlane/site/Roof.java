package dev.warmlane.site;

import dev.warmlane.physics.SurfaceRoughness;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;

/**
 * The flat roof that collectors lie or stand on.
 *
 * @param lengthM longer side, m
 * @param widthM shorter side, m
 * @param heightM height of the roof above the ground, m
 * @param albedo share of short-wave that the bare roof reflects
 * @param emittance long-wave emittance of the bare roof
 * @param uValueWm2K heat transmission from the roof's surface to the room below, W/m²K
 * @param roomTemperatureC temperature of the room below, °C
 * @param roughnessFactor roughness of the bare roof for forced convection, 1 (very smooth) to 2.2 (very rough)
 * @param windSpeedRatio wind speed along the roof over the undisturbed speed at its height
 * @param usableShare share of the roof's area that collectors may cover
 * @param horizon what stands around it farther away and hides sky from the collectors
 */
public record Roof(
        double lengthM,
        double widthM,
        double heightM,
        double albedo,
        double emittance,
        double uValueWm2K,
        double roomTemperatureC,
        double roughnessFactor,
        double windSpeedRatio,
        double usableShare,
        Horizon horizon) {

    /** Range of {@link #lengthM}. */
    public static final Range LENGTH = Range.of("roof length", Dimension.LENGTH, 1, 500);

    /** Range of {@link #widthM}. */
    public static final Range WIDTH = Range.of("roof width", Dimension.LENGTH, 1, 500);

    /** Range of the area of a roof of which a side is not known, m². */
    public static final Range AREA =
            Range.of("roof area", Dimension.AREA, LENGTH.lowest() * WIDTH.lowest(), LENGTH.highest() * WIDTH.highest());

    /** Range of {@link #heightM}. */
    public static final Range HEIGHT = Range.of("roof height", Dimension.LENGTH, 2, 200);

    /** Range of {@link #albedo}. */
    public static final Range ALBEDO = Range.share("roof albedo", 0, 0.95);

    /** Range of {@link #emittance}. */
    public static final Range EMITTANCE = Range.share("roof emittance", 0.1, 1);

    /** Range of {@link #uValueWm2K}. */
    public static final Range U_VALUE = Range.of("roof U value", Dimension.HEAT_TRANSFER_COEFFICIENT, 0, 10);

    /** Range of {@link #roomTemperatureC}. */
    public static final Range ROOM_TEMPERATURE = Range.of("room temperature", Dimension.TEMPERATURE, -20, 50);

    /** Range of {@link #roughnessFactor}. */
    public static final Range ROUGHNESS = SurfaceRoughness.FACTOR.named("roof roughness factor");

    /** Range of {@link #windSpeedRatio}. */
    public static final Range WIND_SPEED_RATIO = Range.number("roof wind speed ratio", 0, 2);

    /** Range of {@link #usableShare}. */
    public static final Range USABLE_SHARE = Range.share("usable share of the roof", 0.01, 1);

    /** Usual {@link #albedo}. */
    public static final Usual USUAL_ALBEDO = ALBEDO.usually(0.2, "aged dark roofing");

    /** Usual {@link #emittance}. */
    public static final Usual USUAL_EMITTANCE = EMITTANCE.usually(0.9, "roofing other than bare metal");

    /** Usual {@link #uValueWm2K}. */
    public static final Usual USUAL_U_VALUE = U_VALUE.usually(0.5, "between an insulated roof and a bare deck");

    /** Usual {@link #roomTemperatureC}. */
    public static final Usual USUAL_ROOM_TEMPERATURE = ROOM_TEMPERATURE.usually(22, "a room for people");

    /** Usual {@link #roughnessFactor}. */
    public static final Usual USUAL_ROUGHNESS = ROUGHNESS.usually(
            SurfaceRoughness.MEDIUM_SMOOTH.factor(), "medium smooth membrane, ASHRAE after Walton, from memory");

    /** Usual {@link #windSpeedRatio}. */
    public static final Usual USUAL_WIND_SPEED_RATIO =
            WIND_SPEED_RATIO.usually(1, "published roof-level ratios are not consistent enough for another value");

    /** Usual {@link #usableShare}. */
    public static final Usual USUAL_USABLE_SHARE = USABLE_SHARE.usually(0.8, "common practice, no source");

    /** Checks every range. */
    public Roof {
        LENGTH.check(lengthM);
        WIDTH.check(widthM);
        HEIGHT.check(heightM);
        ALBEDO.check(albedo);
        EMITTANCE.check(emittance);
        U_VALUE.check(uValueWm2K);
        ROOM_TEMPERATURE.check(roomTemperatureC);
        ROUGHNESS.check(roughnessFactor);
        WIND_SPEED_RATIO.check(windSpeedRatio);
        USABLE_SHARE.check(usableShare);
    }

    /** Starts a roof of a size and height, m, with the defaults of {@link Builder}. */
    public static Builder builder(double lengthM, double widthM, double heightM) {
        return new Builder(lengthM, widthM, heightM);
    }

    /** This roof as a builder, to change one thing. */
    public Builder toBuilder() {
        return new Builder(lengthM, widthM, heightM)
                .albedo(albedo)
                .emittance(emittance)
                .uValueWm2K(uValueWm2K)
                .roomTemperatureC(roomTemperatureC)
                .roughnessFactor(roughnessFactor)
                .windSpeedRatio(windSpeedRatio)
                .usableShare(usableShare)
                .horizon(horizon);
    }

    /** Area, m². */
    public double areaM2() {
        return lengthM * widthM;
    }

    /** Area that collectors may cover, m². */
    public double usableAreaM2() {
        return areaM2() * usableShare;
    }

    /** Gathers a roof. What is not said is usual: {@link #USUAL_ALBEDO} and the like. */
    public static final class Builder {
        private final double lengthM;
        private final double widthM;
        private final double heightM;
        private double albedo = USUAL_ALBEDO.value();
        private double emittance = USUAL_EMITTANCE.value();
        private double uValueWm2K = USUAL_U_VALUE.value();
        private double roomTemperatureC = USUAL_ROOM_TEMPERATURE.value();
        private double roughnessFactor = USUAL_ROUGHNESS.value();
        private double windSpeedRatio = USUAL_WIND_SPEED_RATIO.value();
        private double usableShare = USUAL_USABLE_SHARE.value();
        private Horizon horizon = Horizon.LEVEL;

        private Builder(double lengthM, double widthM, double heightM) {
            this.lengthM = lengthM;
            this.widthM = widthM;
            this.heightM = heightM;
        }

        /** See {@link Roof#albedo}. */
        public Builder albedo(double value) {
            albedo = value;
            return this;
        }

        /** See {@link Roof#emittance}. */
        public Builder emittance(double value) {
            emittance = value;
            return this;
        }

        /** See {@link Roof#uValueWm2K}. */
        public Builder uValueWm2K(double value) {
            uValueWm2K = value;
            return this;
        }

        /** See {@link Roof#roomTemperatureC}. */
        public Builder roomTemperatureC(double value) {
            roomTemperatureC = value;
            return this;
        }

        /** See {@link Roof#roughnessFactor}. */
        public Builder roughnessFactor(double value) {
            roughnessFactor = value;
            return this;
        }

        /** See {@link Roof#windSpeedRatio}. */
        public Builder windSpeedRatio(double value) {
            windSpeedRatio = value;
            return this;
        }

        /** See {@link Roof#usableShare}. */
        public Builder usableShare(double value) {
            usableShare = value;
            return this;
        }

        /** See {@link Roof#horizon}; level where nothing is said. */
        public Builder horizon(Horizon value) {
            horizon = value;
            return this;
        }

        /** The finished roof. */
        public Roof build() {
            return new Roof(
                    lengthM,
                    widthM,
                    heightM,
                    albedo,
                    emittance,
                    uValueWm2K,
                    roomTemperatureC,
                    roughnessFactor,
                    windSpeedRatio,
                    usableShare,
                    horizon);
        }
    }
}
