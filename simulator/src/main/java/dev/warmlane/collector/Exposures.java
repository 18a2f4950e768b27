package dev.warmlane.collector;

import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.Plane;
import dev.warmlane.irradiance.PlaneIrradiance;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.RowShading;
import dev.warmlane.physics.Air;
import dev.warmlane.physics.Constants;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;

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

    Exposures(CollectorSurroundings around, IncidenceModifier incidence, double roughnessFactor) {
        this.around = around;
        this.incidence = incidence;
        this.roughnessFactor = roughnessFactor;
    }

    /** Mats flat on the roof: the whole sky before them, the roof and the room behind. */
    Exposure flat(Mounting.FlatOnRoof flat) {
        Exposure exposure = new Exposure(around.filmOfMat(roughnessFactor), null, throughRoof(flat.gapM()));
        unobstructed(exposure, Plane.HORIZONTAL);
        return exposure;
    }

    /** On a pitched roof: sky and surroundings before them, the roof and the room behind. */
    Exposure pitched(Mounting.FlushOnPitchedRoof pitched) {
        Exposure exposure = new Exposure(
                around.filmOfTilted(pitched.tiltDeg(), true, pitched.slopeLengthM(), 0, 1, roughnessFactor),
                null,
                throughRoof(pitched.gapM()));
        unobstructed(exposure, new Plane(pitched.tiltDeg(), pitched.azimuthDeg()));
        return exposure;
    }

    /** A rack at a place among its rows. */
    Exposure rack(Mounting.OpenRack rack, RowPlace place) {
        boolean open = rack.back().open();
        double wind = place == RowPlace.FIRST ? 1 : rack.innerWind();
        FaceFilm filmBehind = around.filmOfRack(rack, wind, false, roughnessFactor);
        Exposure exposure = new Exposure(
                around.filmOfRack(rack, wind, true, roughnessFactor),
                open ? filmBehind : null,
                open ? ClosedBack.NONE : ClosedBack.board());
        WeatherYear weather = around.weather();
        RackRows rows = new RackRows(
                rack.tiltDeg(), rack.azimuthDeg(), rack.chordM(), rack.pitchM(), rack.rows(), rack.clearanceM());
        Plane plane = rows.plane();
        PlaneIrradiance light =
                PlaneIrradiance.of(weather, plane, around.physics().sky());
        RowShading shading = RowShading.of(weather.sun(), rows);
        RoofUnderRacks roof = new RoofUnderRacks(around, rows, place, shading, wind);
        double plate = Constants.blackBody(RoofUnderRacks.PLATE_C);
        double frontSky = rows.frontSkyView(place);
        double backSky = rows.backSkyView(place);
        double background = frontSky / plane.skyView();
        double neighbour = rows.neighbourView(place);
        double sky = incidence.skyDiffuse(rack.tiltDeg());
        double ground = incidence.groundReflected(rack.tiltDeg());
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double lit = place == RowPlace.FIRST ? 1 : 1 - shading.shadedShare(hour);
            double straight = lit * (light.beamWm2(hour) + light.circumsolarWm2(hour));
            double diffuse = background * light.backgroundWm2(hour);
            double angle = light.incidenceDeg(hour);
            double longWave = weather.skyLongWaveWm2(hour);
            exposure.irradiance[hour] = straight + diffuse + roof.lightOnFront[hour];
            exposure.modifiedFront[hour] =
                    incidence.beam(angle) * straight + sky * diffuse + ground * roof.lightOnFront[hour];
            exposure.longWaveFront[hour] = frontSky * longWave + roof.longWaveOnFront[hour] + neighbour * plate;
            double longWaveBehind = backSky * longWave + roof.longWaveOnBack[hour] + neighbour * plate;
            double beamBehind = lit * light.beamOnBackWm2(hour);
            double skyBehind = backSky * weather.diffuseHorizontalWm2(hour);
            if (open) {
                // a back that looks down on the roof takes its light as a front of the same tilt takes the sky's
                exposure.modifiedBack[hour] =
                        incidence.beam(180 - angle) * beamBehind + ground * skyBehind + sky * roof.lightOnBack[hour];
                exposure.longWaveBack[hour] = longWaveBehind;
            } else {
                exposure.closed.outside(
                        hour,
                        rack.back().boardWm2K(),
                        filmBehind,
                        weather.airTemperatureC(hour),
                        beamBehind + skyBehind + roof.lightOnBack[hour],
                        longWaveBehind);
            }
        }
        return exposure;
    }

    /**
     * A plane that sees the sky and, below its horizon, ground or other roofs: they are at air temperature and reflect as
     * the roof's albedo says.
     */
    private void unobstructed(Exposure exposure, Plane plane) {
        WeatherYear weather = around.weather();
        PlaneIrradiance light =
                PlaneIrradiance.of(weather, plane, around.physics().sky());
        double sky = incidence.skyDiffuse(plane.tiltDeg());
        double ground = incidence.groundReflected(plane.tiltDeg());
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double straight = light.beamWm2(hour) + light.circumsolarWm2(hour);
            double reflected = light.groundReflectedWm2(hour, around.roof().albedo());
            exposure.irradiance[hour] = straight + light.backgroundWm2(hour) + reflected;
            exposure.modifiedFront[hour] = incidence.beam(light.incidenceDeg(hour)) * straight
                    + sky * light.backgroundWm2(hour)
                    + ground * reflected;
            exposure.longWaveFront[hour] = plane.skyView() * weather.skyLongWaveWm2(hour)
                    + (1 - plane.skyView()) * Constants.blackBody(weather.airTemperatureC(hour));
        }
    }

    /** From a mat through the gap and the roof to the room, W/m²K: 1/(1/h_gap + 1/U_roof), h_gap = k/gap + 5.5. */
    private ClosedBack throughRoof(double gapM) {
        double uValue = around.roof().uValueWm2K();
        double gap = Air.conductivityWmK(AirHours.SURFACE_C) / gapM + GAP_RADIATION_WM2K;
        return ClosedBack.throughRoof(
                uValue == 0 ? 0 : 1 / (1 / gap + 1 / uValue), around.roof().roomTemperatureC());
    }
}
