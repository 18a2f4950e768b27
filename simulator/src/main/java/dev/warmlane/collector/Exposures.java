package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.LightPast;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.PlaneIrradiance;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.RowShading;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.physics.Air;
import dev.warmlane.physics.Constants;
import dev.warmlane.weather.HourlyWeather;
import java.util.function.Function;

/** Makes the {@link Exposure} of a mounting. */
final class Exposures {

    /**
     * Conductance of the gap below a mat beyond conduction through its air, W/m²K: radiation between two dark surfaces,
     * 4·ε·σ·T³ with an effective emittance of 0.9 at 27 °C.
     */
    private static final double GAP_RADIATION_WM2K = 5.5;

    private final CollectorSurroundings around;
    private final IncidenceModifier incidence;
    private final double roughnessFactor;
    private final LightPast past;

    /** Of collectors that see the sky above the roof's horizon. */
    Exposures(CollectorSurroundings around, IncidenceModifier incidence, double roughnessFactor) {
        this(around, incidence, roughnessFactor, Skylines.of(around.roof().horizon()));
    }

    Exposures(CollectorSurroundings around, IncidenceModifier incidence, double roughnessFactor, Skylines skylines) {
        this.around = around;
        this.incidence = incidence;
        this.roughnessFactor = roughnessFactor;
        this.past = LightPast.of(skylines, around.weather());
    }

    private int hours() {
        return around.weather().hours();
    }

    /** Mats flat on the roof: the whole sky before them, the roof and the room behind. */
    Exposure flat(Mounting.FlatOnRoof flat) {
        Exposure exposure = new Exposure(hours(), around.filmOfMat(roughnessFactor), null, throughRoof(flat.gapM()));
        unobstructed(exposure, Plane.HORIZONTAL);
        return exposure;
    }

    /** On a pitched roof: sky and surroundings before them, the roof and the room behind. */
    Exposure pitched(Mounting.FlushOnPitchedRoof pitched) {
        Exposure exposure = new Exposure(
                hours(),
                around.filmOfTilted(pitched.tiltDeg(), true, pitched.slopeLengthM(), 0, 1, roughnessFactor),
                null,
                throughRoof(pitched.gapM()));
        unobstructed(exposure, new Plane(pitched.tiltDeg(), pitched.azimuthDeg()));
        return exposure;
    }

    /**
     * A rack at a place among its rows.
     *
     * @param collector makes the balance of the collector that is exposed, for the temperature of its dry plates: its roof
     *     and its neighbours see them while no water runs
     */
    Exposure rack(Mounting.OpenRack rack, RowPlace place, Function<Exposure, HourlyHeat> collector) {
        boolean open = rack.back().open();
        double wind = place == RowPlace.FIRST ? 1 : rack.innerWind();
        FaceFilm filmBehind = around.filmOfRack(rack, wind, false, roughnessFactor);
        Exposure exposure = new Exposure(
                hours(),
                around.filmOfRack(rack, wind, true, roughnessFactor),
                open ? filmBehind : null,
                open ? ClosedBack.none(hours()) : ClosedBack.board(hours()),
                DryView.toFill(hours()),
                rack.rack().middleM(),
                wind);
        HourlyHeat dry = collector.apply(exposure);
        HourlyWeather weather = around.weather();
        RackRows rows = rack.layout();
        Plane plane = rows.plane();
        PlaneIrradiance light =
                PlaneIrradiance.of(weather, plane, around.physics().sky());
        RowShading shading = RowShading.of(weather.sun(), rows);
        RoofUnderRacks roof = new RoofUnderRacks(around, new LightOnRoof(weather, past), rows, place, shading, wind);
        double plate = Constants.blackBody(RoofUnderRacks.PLATE_C);
        double frontSky = rows.frontSkyView(place);
        double backSky = rows.backSkyView(place);
        double frontOpen = past.skylines().skyShare(rows, place, false);
        double backOpen = past.skylines().skyShare(rows, place, true);
        double platePerK = 4 * plate / (RoofUnderRacks.PLATE_C + Constants.KELVIN);
        double background = frontSky / plane.skyView() * frontOpen;
        double before = rows.frontNeighbourView(place);
        double behind = rows.backNeighbourView(place);
        boolean tents = rows.tents();
        double sky = incidence.skyDiffuse(rack.tiltDeg());
        double ground = incidence.groundReflected(rack.tiltDeg());
        for (int hour : around.solved()) {
            roof.at(hour);
            double lit = past.lit(hour) * (place == RowPlace.FIRST ? 1 : 1 - shading.shadedShare(hour));
            double straight = lit * (light.beamWm2(hour) + light.circumsolarWm2(hour));
            double diffuse = background * light.backgroundWm2(hour);
            double angle = light.incidenceDeg(hour);
            double skyLongWave = weather.skyLongWaveWm2(hour);
            exposure.irradiance[hour] = straight + diffuse + roof.lightOnFront;
            exposure.modifiedFront[hour] =
                    incidence.beam(angle) * straight + sky * diffuse + ground * roof.lightOnFront;
            double hidden = Constants.blackBody(weather.airTemperatureC(hour));
            double longWaveBefore = frontOpen * skyLongWave + (1 - frontOpen) * hidden;
            exposure.longWaveFront[hour] = frontSky * longWaveBefore + roof.longWaveOnFront + before * plate;
            double longWaveBehind =
                    backSky * (backOpen * skyLongWave + (1 - backOpen) * hidden) + roof.longWaveOnBack + behind * plate;
            double beamBehind = tents ? 0 : lit * light.beamOnBackWm2(hour);
            double skyBehind = backOpen * backSky * weather.diffuseHorizontalWm2(hour);
            if (open) {
                // a back that looks down on the roof takes its light as a front of the same tilt takes the sky's
                exposure.modifiedBack[hour] =
                        incidence.beam(180 - angle) * beamBehind + ground * skyBehind + sky * roof.lightOnBack;
                exposure.longWaveBack[hour] = longWaveBehind;
            } else {
                exposure.closed.outside(
                        hour,
                        rack.back().boardWm2K(),
                        filmBehind,
                        weather.airTemperatureC(hour),
                        beamBehind + skyBehind + roof.lightOnBack,
                        longWaveBehind);
            }
            double backPerK = open ? 1 : exposure.closed.facePerK[hour];
            // rows look at each other's other face, tents at the same
            double beforePerK = tents ? 1 : backPerK;
            double behindPerK = tents ? backPerK : 1;
            // about plates of 30 °C first, which finds the dry plate to a few kelvin; then about that
            exposure.dry.set(
                    hour,
                    RoofUnderRacks.PLATE_C,
                    0,
                    0,
                    roof.frontPerK + before * beforePerK * platePerK,
                    roof.backPerK + behind * behindPerK * platePerK);
            double dryC = dry.stagnationC(hour);
            double backC = open ? dryC : exposure.closed.faceC(hour, dryC);
            double runningOnFront = roof.longWaveOnFront;
            double runningOnBack = roof.longWaveOnBack;
            roof.withPlates(dryC, backC, backPerK);
            double front = Constants.blackBody(dryC);
            double back = Constants.blackBody(backC);
            double frontRise = 4 * front / (dryC + Constants.KELVIN);
            double backRise = backPerK * 4 * back / (backC + Constants.KELVIN);
            exposure.dry.set(
                    hour,
                    dryC,
                    roof.longWaveOnFront - runningOnFront + before * ((tents ? front : back) - plate),
                    roof.longWaveOnBack - runningOnBack + behind * ((tents ? back : front) - plate),
                    roof.frontPerK + before * (tents ? frontRise : backRise),
                    roof.backPerK + behind * (tents ? backRise : frontRise));
        }
        return exposure;
    }

    /**
     * A plane that sees the sky and, below its horizon, ground or other roofs: they are at air temperature and reflect as
     * the roof's albedo says.
     */
    private void unobstructed(Exposure exposure, Plane plane) {
        HourlyWeather weather = around.weather();
        PlaneIrradiance light =
                PlaneIrradiance.of(weather, plane, around.physics().sky());
        double sky = incidence.skyDiffuse(plane.tiltDeg());
        double ground = incidence.groundReflected(plane.tiltDeg());
        double open = past.skylines().skyShare(plane);
        double seen = open * plane.skyView();
        LightOnRoof onGround = new LightOnRoof(weather, past);
        for (int hour : around.solved()) {
            double straight = past.lit(hour) * (light.beamWm2(hour) + light.circumsolarWm2(hour));
            double background = open * light.backgroundWm2(hour);
            double reflected = onGround.share(hour)
                    * light.groundReflectedWm2(hour, around.roof().albedo());
            exposure.irradiance[hour] = straight + background + reflected;
            exposure.modifiedFront[hour] =
                    incidence.beam(light.incidenceDeg(hour)) * straight + sky * background + ground * reflected;
            exposure.longWaveFront[hour] = seen * weather.skyLongWaveWm2(hour)
                    + (1 - seen) * Constants.blackBody(weather.airTemperatureC(hour));
        }
    }

    /** From a mat through the gap and the roof to the room, W/m²K: 1/(1/h_gap + 1/U_roof), h_gap = k/gap + 5.5. */
    private ClosedBack throughRoof(double gapM) {
        double uValue = around.roof().uValueWm2K();
        double gap = Air.conductivityWmK(AirHours.SURFACE_C) / gapM + GAP_RADIATION_WM2K;
        return ClosedBack.throughRoof(
                hours(),
                uValue == 0 ? 0 : 1 / (1 / gap + 1 / uValue),
                around.roof().roomTemperatureC());
    }
}
