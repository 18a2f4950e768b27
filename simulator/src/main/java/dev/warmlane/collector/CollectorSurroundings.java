package dev.warmlane.collector;

import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.physics.FilmCorrelation.Face;
import dev.warmlane.physics.NaturalFace;
import dev.warmlane.physics.PlateFace;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.wind.RoofRun;
import dev.warmlane.wind.WindProfile;
import java.util.Optional;

/**
 * What surrounds the collectors, whatever they are: the weather, the roof, the wind at a height, the films of faces.
 * Immutable; shared by all mountings on the same roof in the same weather.
 */
public final class CollectorSurroundings {

    /**
     * Balances are looked for from where those of the hour before were found. That many hours on nothing is left of where
     * the first began, not even in the last bit: each hour's error is a thousandth of that of the hour before and less.
     */
    private static final int SETTLING_HOURS = 48;

    private final HourlyWeather weather;
    private final Roof roof;
    private final Terrain terrain;
    private final CollectorPhysics physics;
    private final Optional<HourSpan> span;
    private final AirHours air;
    private final double roofRunM;

    /**
     * Prepares a roof in its weather.
     *
     * @param weather the weather
     * @param roof the roof
     * @param terrain the ground around it
     */
    public CollectorSurroundings(HourlyWeather weather, Roof roof, Terrain terrain) {
        this(weather, roof, terrain, CollectorPhysics.USUAL);
    }

    /**
     * Prepares a roof in its weather for a cross-check with other models.
     *
     * @param weather the weather
     * @param roof the roof
     * @param terrain the ground around it
     * @param physics the models
     */
    public CollectorSurroundings(HourlyWeather weather, Roof roof, Terrain terrain, CollectorPhysics physics) {
        this(weather, roof, terrain, physics, Optional.empty());
    }

    /**
     * Prepares a roof in some hours of a year of weather: what stands on it is worked out for them alone, the same to the last bit
     * as for all.
     *
     * @param weather the weather
     * @param roof the roof
     * @param terrain the ground around it
     * @param physics the models
     * @param span the hours
     */
    public CollectorSurroundings(
            WeatherYear weather, Roof roof, Terrain terrain, CollectorPhysics physics, HourSpan span) {
        this(weather, roof, terrain, physics, Optional.of(span));
    }

    private CollectorSurroundings(
            HourlyWeather weather, Roof roof, Terrain terrain, CollectorPhysics physics, Optional<HourSpan> span) {
        this.weather = weather;
        this.roof = roof;
        this.terrain = terrain;
        this.physics = physics;
        this.span = span;
        this.air = span.map(
                        some -> new AirHours(weather, some.from(SETTLING_HOURS).rising()))
                .orElseGet(() -> new AirHours(weather));
        this.roofRunM = RoofRun.effectiveRunM(roof.lengthM(), roof.widthM());
    }

    /** What it was prepared for that is otherwise, in a word; nothing where it is the same. */
    Optional<String> differsFrom(Roof otherRoof, Terrain otherTerrain, CollectorPhysics otherPhysics) {
        if (!roof.equals(otherRoof)) {
            return Optional.of("roof");
        }
        if (terrain != otherTerrain) {
            return Optional.of("terrain");
        }
        return physics.equals(otherPhysics) ? Optional.empty() : Optional.of("models of films, plates or sky");
    }

    HourlyWeather weather() {
        return weather;
    }

    /** Whether some hours of the year are among those it was prepared for. */
    boolean covers(HourSpan hours) {
        return span.map(some -> some.covers(hours)).orElse(true);
    }

    /** The hours that collectors are worked out for, rising. */
    int[] solved() {
        return air.solved;
    }

    Roof roof() {
        return roof;
    }

    CollectorPhysics physics() {
        return physics;
    }

    AirHours air() {
        return air;
    }

    /** Wind at a height above the roof in each hour, m/s, some share of what is usual there. */
    double[] windMs(double aboveRoofM, double share) {
        double ratio = WindProfile.ratio(terrain, roof.heightM() + aboveRoofM) * roof.windSpeedRatio() * share;
        double[] wind = new double[weather.hours()];
        for (int hour = 0; hour < wind.length; hour++) {
            wind[hour] = ratio * weather.windSpeedMs(hour);
        }
        return wind;
    }

    /** The film of the roof's own surface, always by the physics. */
    FaceFilm filmOfRoof(double windShare) {
        return filmOnRoof(roof.roughnessFactor(), FilmCorrelation.PHYSICAL, windShare);
    }

    /** The film of a mat lying on the roof. */
    FaceFilm filmOfMat(double roughnessFactor) {
        return filmOnRoof(roughnessFactor, physics.film(), 1);
    }

    private FaceFilm filmOnRoof(double roughnessFactor, FilmCorrelation correlation, double windShare) {
        double areaToPerimeter = roof.areaM2() / (2 * (roof.lengthM() + roof.widthM()));
        NaturalFace natural = new NaturalFace(new PlateFace(0, true, roofRunM, areaToPerimeter), AirHours.PRANDTL);
        Face face = new Face(0, true, roofRunM, true);
        return FaceFilm.of(correlation, air, windMs(0, windShare), face, roughnessFactor, natural);
    }

    /**
     * The film of one face of a rack: that of its chord in the open, and the more of the roof's the lower it lies on it, see
     * {@link Mounting.OpenRack#roofShare}.
     *
     * @param rack the rack
     * @param windShare wind at it over that at the first row
     * @param facesUp whether it is the upper face
     * @param roughnessFactor roughness of the collector
     */
    FaceFilm filmOfRack(Mounting.OpenRack rack, double windShare, boolean facesUp, double roughnessFactor) {
        FaceFilm open =
                filmOfTilted(rack.tiltDeg(), facesUp, rack.chordM(), rack.rack().middleM(), windShare, roughnessFactor);
        double onRoof = rack.roofShare();
        if (onRoof == 0) {
            return open;
        }
        FaceFilm low = facesUp
                ? filmOnRoof(roughnessFactor, physics.film(), windShare)
                : FaceFilm.of(
                        physics.film(),
                        air,
                        windMs(0, windShare),
                        new Face(rack.tiltDeg(), false, roofRunM, true),
                        roughnessFactor,
                        faceOfRow(rack.tiltDeg(), false, rack.chordM()));
        return FaceFilm.between(open, low, onRoof);
    }

    /**
     * The film of one face of a tilted collector that stands in the wind by itself.
     *
     * @param tiltDeg tilt
     * @param facesUp whether it is the upper face
     * @param lengthM length up the slope
     * @param aboveRoofM height of its middle above the roof
     * @param windShare wind at it over the usual one
     * @param roughnessFactor roughness of the collector
     */
    FaceFilm filmOfTilted(
            double tiltDeg,
            boolean facesUp,
            double lengthM,
            double aboveRoofM,
            double windShare,
            double roughnessFactor) {
        return FaceFilm.of(
                physics.film(),
                air,
                windMs(aboveRoofM, windShare),
                new Face(tiltDeg, facesUp, lengthM, false),
                roughnessFactor,
                faceOfRow(tiltDeg, facesUp, lengthM));
    }

    /** Rows are long: area over perimeter of a strip is half its width. */
    private static NaturalFace faceOfRow(double tiltDeg, boolean facesUp, double lengthM) {
        return new NaturalFace(new PlateFace(tiltDeg, facesUp, lengthM, lengthM / 2), AirHours.PRANDTL);
    }
}
