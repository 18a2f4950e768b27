package dev.warmlane.collector;

import dev.warmlane.physics.Constants;
import java.util.Arrays;

/**
 * What a plate loses through a closed back in each hour: a conductance to something behind it that has a temperature of its
 * own, the room below a mat or, for a board, what wind, roof and sky make of its outer face.
 *
 * <p>A board of conductance U_b passes U_b (T_p − T_o) to its outer face, which has the balance U_b (T_p − T_o) + a·G + ε(L −
 * σT_o⁴) = h (T_o − T_a). It is solved for two plates, and T_o taken straight between and beyond them: T_o = c + d·T_p. So
 * the plate loses U_b (1 − d) to a temperature of c/(1 − d), where 1/(U_b (1 − d)) = 1/U_b + 1/(h + h_r) for a film h and
 * a radiation h_r that stand still.
 */
final class ClosedBack {

    /** Nothing passes: the back is open, and has its own film. */
    static ClosedBack none(int hours) {
        return throughRoof(hours, 0, 0);
    }

    /** Short-wave that the outer face of a board absorbs: wood and most paints, handbook tables from memory; own choice. */
    static final double BOARD_ABSORPTANCE = 0.6;

    /** Long-wave emittance of the outer face: wood and paint, handbook tables from memory. */
    static final double BOARD_EMITTANCE = 0.9;

    /** The two plates, °C: water that runs is about as warm. */
    private static final double COOL_C = 20;

    private static final double WARM_C = 40;

    private static final int MOST_STEPS = 40;

    private static final double SETTLED_K = 1e-4;

    /** Whether it is a board with wind behind it. */
    final boolean isBoard;

    /** Conductance from the plate to what is behind, W/m²K. */
    final double[] wm2K;

    /** Temperature of what is behind, °C. */
    final double[] behindC;

    /** By how much its outer face gets warmer with each kelvin of the plate; 0 where it has none. */
    final double[] facePerK;

    private ClosedBack(boolean isBoard, int hours) {
        this.isBoard = isBoard;
        this.wm2K = new double[hours];
        this.behindC = new double[hours];
        this.facePerK = new double[hours];
    }

    /** From a mat through gap and roof to the room. */
    static ClosedBack throughRoof(int hours, double wm2K, double roomC) {
        return to(roomC, wm2K, hours);
    }

    /** From a plate to something of one temperature, for as many hours, or moments, as asked for. */
    static ClosedBack to(double behindC, double wm2K, int hours) {
        ClosedBack back = new ClosedBack(false, hours);
        Arrays.fill(back.wm2K, wm2K);
        Arrays.fill(back.behindC, behindC);
        return back;
    }

    /** Through a board, each hour of which {@link #outside} tells. */
    static ClosedBack board(int hours) {
        return new ClosedBack(true, hours);
    }

    /**
     * Says what is behind a board in an hour.
     *
     * @param boardWm2K conductance from face to face
     * @param film of the outer face
     * @param light on the outer face, W/m²
     * @param longWave that arrives at it, W/m²
     */
    void outside(int hour, double boardWm2K, FaceFilm film, double airC, double light, double longWave) {
        double gained = BOARD_ABSORPTANCE * light + BOARD_EMITTANCE * longWave;
        double cool = faceC(hour, COOL_C, boardWm2K, film, airC, gained);
        double warm = faceC(hour, WARM_C, boardWm2K, film, airC, gained);
        double perK = (warm - cool) / (WARM_C - COOL_C);
        facePerK[hour] = perK;
        wm2K[hour] = boardWm2K * (1 - perK);
        behindC[hour] = (cool - perK * COOL_C) / (1 - perK);
    }

    /** Temperature of the outer face of a board, °C. */
    static double faceC(int hour, double plateC, double boardWm2K, FaceFilm film, double airC, double gained) {
        double face = airC;
        for (int step = 0; step < MOST_STEPS; step++) {
            double coefficient = film.coefficient(hour, face - airC);
            double kelvin = face + Constants.KELVIN;
            double cube = BOARD_EMITTANCE * Constants.STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
            double surplus = gained + boardWm2K * (plateC - face) - cube * kelvin - coefficient * (face - airC);
            double change = surplus / (4 * cube + coefficient + boardWm2K);
            face += change;
            if (Math.abs(change) < SETTLED_K) {
                break;
            }
        }
        return face;
    }

    /** Temperature of the outer face behind a plate, °C. */
    double faceC(int hour, double plateC) {
        return behindC[hour] + facePerK[hour] * (plateC - behindC[hour]);
    }

    /** What a plate gains of long-wave that arrives more at the outer face, W/W. */
    double longWaveShare(int hour) {
        return BOARD_EMITTANCE * facePerK[hour];
    }

    /** What a plate loses through it, W/m². */
    double lossWm2(int hour, double plateC) {
        return wm2K[hour] * (plateC - behindC[hour]);
    }
}
