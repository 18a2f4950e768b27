package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.warmlane.SyntheticYear;
import dev.warmlane.irradiance.AngleCoefficient;
import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What reaches a collector, against the geometry of sun, rows and roof worked out anew. */
class ExposuresTest {

    /** Two ways to write the same geometry; low suns magnify the rounding. */
    private static final double ROUNDING_WM2 = 1e-6;

    /** Five digits in what is worked by hand. */
    private static final double HAND_PERCENT = 0.02;

    private static final double TILT_DEG = 30;
    private static final double CHORD_M = 2;
    private static final double PITCH_M = 3;
    private static final double RUN_M = 1.7320508075688772;
    private static final double RISE_M = 1;
    private static final Mounting.OpenRack ROWS = new Mounting.OpenRack(TILT_DEG, 180, CHORD_M, PITCH_M, 5, 0.3);

    /** Takes beam alone: whole up to 60 degrees, then straight down to nothing at 90; no diffuse light. */
    private static final IncidenceModifier BEAM_ALONE = new AngleCoefficient(0, 0);

    /** Takes diffuse light whole. */
    private static final IncidenceModifier EVEN = new AngleCoefficient(0, 1);

    /** Matte black at the effective angle of the sky for 30 degrees, 59.68 - 4.164 + 1.3473 = 56.863 degrees. */
    private static final double SKY_K = 0.94386;

    /** Matte black at the effective angle of the ground for 30 degrees, 90 - 17.364 + 2.4237 = 75.060 degrees. */
    private static final double GROUND_K = 0.76818;

    /** (1 - cos 30°)/2. */
    private static final double GROUND_VIEW = 0.0669873;

    private final WeatherYear weather = SyntheticYear.at(40).build();

    /** The ray over the upper edge of the row before meets the plate at a share f of its height. */
    @Test
    void theRowBeforeShadesTheFrontFromBelow() {
        Exposure first = exposures(Demo.ROOF, BEAM_ALONE).rack(ROWS, RowPlace.FIRST, HeldPlates.AT_30);
        Exposure interior = exposures(Demo.ROOF, BEAM_ALONE).rack(ROWS, RowPlace.INTERIOR, HeldPlates.AT_30);
        int shadedHours = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (!(first.modifiedFront[hour] > 0)) {
                continue;
            }
            double height = heightTowards(hour, 1);
            // rise - height·(gap + f·run) = f·rise, where the gap is from edge to edge over the roof
            double shaded = height > 0 ? (RISE_M - height * (PITCH_M - RUN_M)) / (RISE_M + height * RUN_M) : 0;
            shadedHours += shaded > 0.1 ? 1 : 0;
            double lit = 1 - Math.max(0, shaded);
            assertThat(interior.modifiedFront[hour])
                    .as(HourOfYear.label(hour))
                    .isCloseTo(lit * first.modifiedFront[hour], within(ROUNDING_WM2));
            // before incidence: at least the beam that is shaded is missing
            assertThat(first.irradiance[hour] - interior.irradiance[hour])
                    .isGreaterThanOrEqualTo(
                            (1 - lit) * weather.directNormalWm2(hour) * cosIncidence(hour, TILT_DEG) - 1e-6);
        }
        assertThat(shadedHours).isGreaterThan(300);
    }

    /** In summer mornings and evenings the sun stands behind steep rows; the row behind shades the back from below. */
    @Test
    void theSunBehindShinesOnTheBack() {
        double riseM = Math.sqrt(3);
        double runM = 1;
        Mounting.OpenRack steep = new Mounting.OpenRack(60, 180, CHORD_M, PITCH_M, 5, 0.3);
        Exposure first = exposures(Demo.ROOF, BEAM_ALONE).rack(steep, RowPlace.FIRST, HeldPlates.AT_30);
        Exposure interior = exposures(Demo.ROOF, BEAM_ALONE).rack(steep, RowPlace.INTERIOR, HeldPlates.AT_30);
        int sunnyHours = 0;
        int shadedHours = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double cos = weather.sun().isUp(hour) ? -cosIncidence(hour, 60) : 0;
            double beam = cos > 0 ? weather.directNormalWm2(hour) * cos * beamModifier(cos) : 0;
            sunnyHours += beam > 50 ? 1 : 0;
            assertThat(first.modifiedBack[hour]).as(HourOfYear.label(hour)).isCloseTo(beam, within(ROUNDING_WM2));
            if (beam > 0) {
                double height = heightTowards(hour, -1);
                // over the upper edge of the row behind: rise - height·(pitch + run - f·run) = f·rise
                double shaded = height > 0 ? (riseM - height * (PITCH_M + runM)) / (riseM - height * runM) : 0;
                shadedHours += shaded > 0.1 ? 1 : 0;
                assertThat(interior.modifiedBack[hour])
                        .as(HourOfYear.label(hour))
                        .isCloseTo((1 - Math.max(0, shaded)) * beam, within(ROUNDING_WM2));
            }
        }
        assertThat(sunnyHours).isGreaterThan(100);
        assertThat(shadedHours).isGreaterThan(100);
    }

    @Test
    void aBackLooksAtTheSkyAsAFrontLooksAtTheGround() {
        Roof black = Demo.ROOF.toBuilder().albedo(0).build();
        Exposure exposure = exposures(black, new MatteBlack()).rack(ROWS, RowPlace.FIRST, HeldPlates.AT_30);
        int hours = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (weather.sun().isUp(hour) && cosIncidence(hour, TILT_DEG) > 0) {
                assertThat(exposure.modifiedBack[hour])
                        .isCloseTo(
                                GROUND_K * GROUND_VIEW * weather.diffuseHorizontalWm2(hour),
                                withinPercentage(HAND_PERCENT));
                hours++;
            }
        }
        assertThat(hours).isGreaterThan(3000);
    }

    @Test
    void aBackLooksAtTheRoofAsAFrontLooksAtTheSky() {
        Roof black = Demo.ROOF.toBuilder().albedo(0).build();
        Roof pale = Demo.ROOF.toBuilder().albedo(0.6).build();
        Exposure matteBlack = exposures(black, new MatteBlack()).rack(ROWS, RowPlace.INTERIOR, HeldPlates.AT_30);
        Exposure mattePale = exposures(pale, new MatteBlack()).rack(ROWS, RowPlace.INTERIOR, HeldPlates.AT_30);
        Exposure evenBlack = exposures(black, EVEN).rack(ROWS, RowPlace.INTERIOR, HeldPlates.AT_30);
        Exposure evenPale = exposures(pale, EVEN).rack(ROWS, RowPlace.INTERIOR, HeldPlates.AT_30);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double onBack = evenPale.modifiedBack[hour] - evenBlack.modifiedBack[hour];
            double onFront = evenPale.modifiedFront[hour] - evenBlack.modifiedFront[hour];
            if (weather.globalHorizontalWm2(hour) > 50) {
                assertThat(onBack).isGreaterThan(1);
                assertThat(mattePale.modifiedBack[hour] - matteBlack.modifiedBack[hour])
                        .isCloseTo(SKY_K * onBack, withinPercentage(HAND_PERCENT));
                assertThat(mattePale.modifiedFront[hour] - matteBlack.modifiedFront[hour])
                        .isCloseTo(GROUND_K * onFront, withinPercentage(HAND_PERCENT));
                assertThat(evenPale.irradiance[hour] - evenBlack.irradiance[hour])
                        .isCloseTo(onFront, withinPercentage(HAND_PERCENT));
            }
        }
    }

    @Test
    void aPitchedRoofTakesWhatItsSurroundingsReflect() {
        Mounting.FlushOnPitchedRoof pitched = new Mounting.FlushOnPitchedRoof(TILT_DEG, 180, 6, 0.005);
        Exposure black = exposures(Demo.ROOF.toBuilder().albedo(0).build(), new MatteBlack())
                .pitched(pitched);
        Exposure pale = exposures(Demo.ROOF.toBuilder().albedo(0.5).build(), new MatteBlack())
                .pitched(pitched);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (weather.globalHorizontalWm2(hour) > 10) {
                double reflected = 0.5 * weather.globalHorizontalWm2(hour) * GROUND_VIEW;
                assertThat(pale.irradiance[hour] - black.irradiance[hour])
                        .isCloseTo(reflected, withinPercentage(HAND_PERCENT));
                assertThat(pale.modifiedFront[hour] - black.modifiedFront[hour])
                        .isCloseTo(GROUND_K * reflected, withinPercentage(HAND_PERCENT));
            }
        }
    }

    /** Air conducts 0.0262 W/mK at 30 °C, by table 0.0259 to 0.0265: with 5 mm and U 2, 1/(1/(5.24 + 5.5) + 1/2) = 1.686. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aMatLosesThroughGapAndRoof(boolean onPitchedRoof) {
        Roof bareDeck = Demo.ROOF.toBuilder().uValueWm2K(2).build();
        Exposures exposures = exposures(bareDeck, EVEN);
        Exposure exposure = onPitchedRoof
                ? exposures.pitched(new Mounting.FlushOnPitchedRoof(TILT_DEG, 180, 6, 0.005))
                : exposures.flat(new Mounting.FlatOnRoof(0.005));
        assertThat(exposure.closed.wm2K[0]).isCloseTo(1.686, within(0.002));
    }

    private Exposures exposures(Roof roof, IncidenceModifier incidence) {
        return new Exposures(new CollectorSurroundings(weather, roof, Terrain.SUBURBAN), incidence, 1.13);
    }

    /** How steeply the sun stands in the side view of rows that face south, towards the south (1) or the north (-1). */
    private double heightTowards(int hour, int sign) {
        double zenith = Math.toRadians(weather.sun().zenithDeg(hour));
        double south = -Math.sin(zenith) * Math.cos(Math.toRadians(weather.sun().azimuthDeg(hour)));
        return Math.cos(zenith) / (sign * south);
    }

    /** The sun's vector times the normal of a plane that faces south. */
    private double cosIncidence(int hour, double tiltDeg) {
        double tilt = Math.toRadians(tiltDeg);
        double zenith = Math.toRadians(weather.sun().zenithDeg(hour));
        double south = -Math.sin(zenith) * Math.cos(Math.toRadians(weather.sun().azimuthDeg(hour)));
        return south * Math.sin(tilt) + Math.cos(zenith) * Math.cos(tilt);
    }

    private static double beamModifier(double cosIncidence) {
        return Math.min(1, (90 - Math.toDegrees(Math.acos(cosIncidence))) / 30);
    }
}
