package dev.warmlane.irradiance;

/** Pieces of the roof around a row, with what each sees and what sees it: geometry only, in two dimensions. Immutable. */
public interface RoofPieces {

    /**
     * The pieces around a row of single plates or of tents.
     *
     * @throws IllegalArgumentException if an interior row is asked for where there is one row alone
     */
    static RoofPieces around(RackRows rows, RowPlace place) {
        return rows.tents() ? new TentRoof(rows, place) : RoofStrips.below(rows, place);
    }

    /** How many pieces. */
    int count();

    /** View factor from a piece to the sky. */
    double skyView(int piece);

    /** View factor from a piece to the fronts of all rows. */
    double viewOfFront(int piece);

    /** View factor from a piece to the backs of all rows. */
    double viewOfBack(int piece);

    /** View factor from the front of a plate to a piece, all its repetitions together. */
    double frontView(int piece);

    /** View factor from the back of a plate to a piece, all its repetitions together. */
    double backView(int piece);

    /**
     * Finds the share of each piece that the sun reaches, 0 to 1. Allocates nothing.
     *
     * @param profileDeg profile angle of the sun, degrees, 0 to 180
     * @param lit filled with the shares; at least {@link #count()} long
     */
    void litShares(double profileDeg, double[] lit);
}
