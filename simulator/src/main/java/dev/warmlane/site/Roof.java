package dev.warmlane.site;

import dev.warmlane.units.Checks;

/**
 * The flat roof that collectors lie or stand on.
 *
 * @param lengthM longer side, m, 1 to 500
 * @param widthM shorter side, m, 1 to 500
 * @param heightM height of the roof above the ground, m, 2 to 200
 * @param albedo share of short-wave that the bare roof reflects, 0 to 0.95
 * @param emittance long-wave emittance of the bare roof, 0.1 to 1
 * @param uValueWm2K heat transmission from the roof's surface to the room below, W/m²K, 0 to 10
 * @param roomTemperatureC temperature of the room below, °C, -20 to 50
 * @param roughnessFactor roughness of the bare roof for forced convection, 1 (very smooth) to 2.2 (very rough)
 * @param windSpeedRatio wind speed along the roof over the undisturbed speed at its height, 0 to 2
 * @param usableShare share of the roof's area that collectors may cover, above 0 to 1
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
        double usableShare) {

    /** Checks every range. */
    public Roof {
        Checks.within("roof length", lengthM, 1, 500, "m");
        Checks.within("roof width", widthM, 1, 500, "m");
        Checks.within("roof height", heightM, 2, 200, "m");
        Checks.within("roof albedo", albedo, 0, 0.95, "");
        Checks.within("roof emittance", emittance, 0.1, 1, "");
        Checks.within("roof U value", uValueWm2K, 0, 10, "W/m2K");
        Checks.within("room temperature", roomTemperatureC, -20, 50, "degC");
        Checks.within("roof roughness factor", roughnessFactor, 1, 2.2, "");
        Checks.within("roof wind speed ratio", windSpeedRatio, 0, 2, "");
        Checks.within("usable share of the roof", usableShare, 0.01, 1, "");
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
                .usableShare(usableShare);
    }

    /** Area, m². */
    public double areaM2() {
        return lengthM * widthM;
    }

    /** Area that collectors may cover, m². */
    public double usableAreaM2() {
        return areaM2() * usableShare;
    }

    /**
     * Gathers a roof. Defaults: albedo 0.2 and emittance 0.9 (aged dark roofing), U value 0.5 W/m²K (between an
     * insulated roof, 0.25, and a bare deck, 2), room 22 °C, roughness factor 1.13 (medium smooth membrane, ASHRAE
     * after Walton, from memory), wind speed ratio 1 (published roof-level ratios are not consistent enough for another
     * default), usable share 0.8 (common practice, no source).
     */
    public static final class Builder {
        private final double lengthM;
        private final double widthM;
        private final double heightM;
        private double albedo = 0.2;
        private double emittance = 0.9;
        private double uValueWm2K = 0.5;
        private double roomTemperatureC = 22;
        private double roughnessFactor = 1.13;
        private double windSpeedRatio = 1;
        private double usableShare = 0.8;

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
                    usableShare);
        }
    }
}
