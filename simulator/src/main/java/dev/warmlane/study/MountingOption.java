package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.Prices;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import dev.warmlane.units.Usual;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A way to mount the collectors that a study compares with others; how many rows it takes follows from the area. */
public sealed interface MountingOption {

    /** Usual length of a rack up its slope. */
    Usual USUAL_CHORD = Rack.CHORD.usually(2, "common practice, no source");

    /** Usual height of a rack's lower edge above the roof. */
    Usual USUAL_CLEARANCE = Rack.CLEARANCE.usually(0.3, "common practice, no source");

    /** {@link #USUAL_CHORD}, m. */
    double USUAL_CHORD_M = USUAL_CHORD.value();

    /** {@link #USUAL_CLEARANCE}, m. */
    double USUAL_CLEARANCE_M = USUAL_CLEARANCE.value();

    /** Rows free of each other's shade six hours around noon on the season's day with the lowest sun; no source. */
    RowSpacing.Unshaded USUAL_SPACING = new RowSpacing.Unshaded(9, 15, Optional.empty());

    /** What the designer calls it. */
    String name();

    /** What collectors cost installed in this way, per m²; nothing where they cost what the installation's prices say. */
    OptionalDouble pricePerM2();

    /** The same way at a price of its own, per m². */
    default MountingOption pricedPerM2(double value) {
        OptionalDouble price = OptionalDouble.of(Prices.COLLECTOR.check(value));
        return match(
                flat -> new Flat(flat.name, flat.mounting, price),
                racks -> new Racks(
                        racks.name,
                        racks.rack,
                        racks.tents,
                        racks.back,
                        racks.windRun,
                        racks.innerWind,
                        racks.spacing,
                        racks.along,
                        price),
                pitched -> new Pitched(pitched.name, pitched.mounting, pitched.roofAreaM2, price));
    }

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Flat, T> flat, Function<Racks, T> racks, Function<Pitched, T> pitched);

    /** Mats flat on the flat roof in the usual way. */
    static Flat flat(String name) {
        return new Flat(name, Mounting.FlatOnRoof.USUAL);
    }

    /**
     * Racks with the usual chord, clearance and spacing and an open back, in rows along the longer side of the roof.
     *
     * @param name what the designer calls them
     * @param tiltDeg tilt, degrees
     * @param azimuthDeg direction the fronts face, degrees clockwise from north
     */
    static Racks racks(String name, double tiltDeg, double azimuthDeg) {
        return new Racks(
                name,
                new Rack(tiltDeg, azimuthDeg, USUAL_CHORD_M, USUAL_CLEARANCE_M),
                Mounting.Back.OPEN,
                Mounting.WindRun.CHORD,
                Mounting.OpenRack.USUAL_INNER_WIND,
                USUAL_SPACING,
                RoofSide.LONG);
    }

    /**
     * Mats flat on the flat roof.
     *
     * @param name what the designer calls it
     * @param mounting how they lie
     * @param pricePerM2 what they cost installed like this, per m², if not what the installation's collectors cost
     */
    record Flat(String name, Mounting.FlatOnRoof mounting, OptionalDouble pricePerM2) implements MountingOption {

        /** At the price of the installation's collectors. */
        public Flat(String name, Mounting.FlatOnRoof mounting) {
            this(name, mounting, OptionalDouble.empty());
        }

        @Override
        public <T> T match(Function<Flat, T> flat, Function<Racks, T> racks, Function<Pitched, T> pitched) {
            return flat.apply(this);
        }
    }

    /**
     * Rows of racks on the flat roof.
     *
     * @param name what the designer calls it
     * @param rack one of the racks; of tents one that faces one of the two ways
     * @param tents whether a row is two racks back to back
     * @param back open to wind and roof, or closed by a board
     * @param windRun the surface the wind has run over
     * @param innerWind wind at every row but the first over that at the first
     * @param spacing how far the rows stand apart
     * @param along the side of the roof that the rows run along, whatever way it lies by the compass
     * @param pricePerM2 what they cost installed like this, per m², if not what the installation's collectors cost
     */
    record Racks(
            String name,
            Rack rack,
            boolean tents,
            Mounting.Back back,
            Mounting.WindRun windRun,
            double innerWind,
            RowSpacing spacing,
            RoofSide along,
            OptionalDouble pricePerM2)
            implements MountingOption {

        private static final double ROUNDING_M = 1e-6;

        /** Single racks at the price of the installation's collectors. */
        public Racks(
                String name,
                Rack rack,
                Mounting.Back back,
                Mounting.WindRun windRun,
                double innerWind,
                RowSpacing spacing,
                RoofSide along) {
            this(name, rack, false, back, windRun, innerWind, spacing, along, OptionalDouble.empty());
        }

        /** Checks the wind and its run. */
        public Racks {
            Mounting.OpenRack.INNER_WIND.check(innerWind);
            windRun.check(rack);
        }

        /** Tilt, degrees. */
        public double tiltDeg() {
            return rack.tiltDeg();
        }

        /** Direction the fronts face, degrees clockwise from north. */
        public double azimuthDeg() {
            return rack.azimuthDeg();
        }

        /** Length of the collector up the slope, m. */
        public double chordM() {
            return rack.chordM();
        }

        /** Height of the lower edge above the roof, m. */
        public double clearanceM() {
            return rack.clearanceM();
        }

        /** The same racks built otherwise; where these cannot have a run over the roof, they have the film of their chord. */
        public Racks withRack(Rack value) {
            return new Racks(name, value, tents, back, windRun.within(value), innerWind, spacing, along, pricePerM2);
        }

        /** The same racks with another run of the wind. */
        public Racks withWindRun(Mounting.WindRun value) {
            return new Racks(name, rack, tents, back, value, innerWind, spacing, along, pricePerM2);
        }

        /** The same racks with another spacing. */
        public Racks withSpacing(RowSpacing value) {
            return new Racks(name, rack, tents, back, windRun, innerWind, value, along, pricePerM2);
        }

        /** The same racks along a side of the roof. */
        public Racks withAlong(RoofSide value) {
            return new Racks(name, rack, tents, back, windRun, innerWind, spacing, value, pricePerM2);
        }

        /** The same racks with another back. */
        public Racks withBack(Mounting.Back value) {
            return new Racks(name, rack, tents, value, windRun, innerWind, spacing, along, pricePerM2);
        }

        /** The same racks with another wind at their inner rows. */
        public Racks withInnerWind(double value) {
            return new Racks(name, rack, tents, back, windRun, value, spacing, along, pricePerM2);
        }

        /** The same racks at another tilt; too steep for a run over the roof, they have the film of their chord. */
        public Racks withTiltDeg(double value) {
            return withRack(rack.withTiltDeg(value));
        }

        /** The same as tents, or as single racks. */
        public Racks withTents(boolean value) {
            return new Racks(name, rack, value, back, windRun, innerWind, spacing, along, pricePerM2);
        }

        /** How far a row reaches over the roof, m. */
        double coveredM() {
            return RackRows.coveredM(rack, tents);
        }

        /**
         * The distance from row to row, m: of tents from ridge to ridge, so that neither side is shaded, nor do they stand in
         * each other.
         *
         * @throws IllegalArgumentException if the rule cannot be kept there, or rows would overlap
         */
        double pitchM(double latitudeDeg, OpeningSeason season) {
            double asked = spacing.pitchM(chordM(), tiltDeg(), azimuthDeg(), latitudeDeg, season);
            if (tents) {
                double other = spacing.pitchM(chordM(), tiltDeg(), rack.turned().azimuthDeg(), latitudeDeg, season);
                double both = Math.max(asked, other);
                asked = spacing.match(fixed -> both, unshaded -> Math.max(both, coveredM()));
            }
            double covered = coveredM();
            if (asked < covered - ROUNDING_M) {
                throw new IllegalArgumentException("rows of \"" + name + "\" would overlap: their pitch is " + asked
                        + " m, but a row covers " + covered + " m of roof; widen the pitch");
            }
            return Math.max(asked, covered);
        }

        /** These racks as they stand, at a distance and in a number. */
        Mounting.OpenRack inRows(double pitchM, int rows) {
            return new Mounting.OpenRack(new RackRows(rack, pitchM, rows, tents), back, windRun, innerWind);
        }

        @Override
        public <T> T match(Function<Flat, T> flat, Function<Racks, T> racks, Function<Pitched, T> pitched) {
            return racks.apply(this);
        }
    }

    /**
     * Lying on a pitched roof.
     *
     * @param name what the designer calls it
     * @param mounting how they lie
     * @param roofAreaM2 area of that roof that collectors may cover, m²; without it the usable area of the installation's
     *     flat roof, so that the same area of building is compared
     * @param pricePerM2 what they cost installed like this, per m², if not what the installation's collectors cost
     */
    record Pitched(
            String name, Mounting.FlushOnPitchedRoof mounting, OptionalDouble roofAreaM2, OptionalDouble pricePerM2)
            implements MountingOption {

        /** At the price of the installation's collectors. */
        public Pitched(String name, Mounting.FlushOnPitchedRoof mounting, OptionalDouble roofAreaM2) {
            this(name, mounting, roofAreaM2, OptionalDouble.empty());
        }

        /** Range of {@link #roofAreaM2}: that of the collectors on it. */
        public static final Range ROOF_AREA = Range.of(
                "area of the pitched roof",
                Dimension.AREA,
                CollectorArray.AREA.lowest(),
                CollectorArray.AREA.highest());

        /** Checks the range. */
        public Pitched {
            roofAreaM2.ifPresent(ROOF_AREA::check);
        }

        @Override
        public <T> T match(Function<Flat, T> flat, Function<Racks, T> racks, Function<Pitched, T> pitched) {
            return pitched.apply(this);
        }
    }

    /** A side of the roof. */
    enum RoofSide {
        /** The longer one. */
        LONG,
        /** The shorter one. */
        SHORT
    }
}
