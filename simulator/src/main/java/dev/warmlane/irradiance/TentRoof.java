package dev.warmlane.irradiance;

/**
 * The roof around tents, seen from one of their sides. Between tents it is cut into equal strips, each of which sees the sky
 * between two ridges and the two sides that stand around it, by crossed strings; it is taken to lie at the height of the
 * lower edges. Before a tent that has nothing before it the roof is that before a single plate, {@link RoofStrips}. Last
 * comes the roof that the tent covers: in the dark, seen by the two backs alone. What passes below lower edges is left
 * out, for light as for long-wave.
 */
final class TentRoof implements RoofPieces {

    /**
     * Strips between two tents; own choice: with twice as many the light and warmth that reach a side move by less than
     * 0.002 of what a full view of the roof would send.
     */
    static final int STRIPS = 12;

    private static final double LEVEL = 1e-12;

    private final RackRows rows;
    private final RoofPieces before;
    private final int count;

    TentRoof(RackRows rows, RowPlace place) {
        this(rows, place, STRIPS);
    }

    TentRoof(RackRows rows, RowPlace place, int strips) {
        this.rows = rows;
        this.before = place == RowPlace.FIRST
                ? RoofStrips.below(new RackRows(rows.rack(), Double.POSITIVE_INFINITY, 1), place)
                : new Valley(rows, strips);
        this.count = before.count() + 1;
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public double skyView(int piece) {
        return isCovered(piece) ? 0 : before.skyView(piece);
    }

    @Override
    public double viewOfFront(int piece) {
        return isCovered(piece) ? 0 : before.viewOfFront(piece);
    }

    @Override
    public double viewOfBack(int piece) {
        return isCovered(piece) ? 1 : before.viewOfBack(piece);
    }

    @Override
    public double frontView(int piece) {
        return isCovered(piece) ? 0 : before.frontView(piece);
    }

    @Override
    public double backView(int piece) {
        return isCovered(piece) ? rows.runM() / rows.chordM() : 0;
    }

    @Override
    public void litShares(double profileDeg, double[] lit) {
        before.litShares(profileDeg, lit);
        lit[count - 1] = 0;
    }

    private boolean isCovered(int piece) {
        return piece == count - 1;
    }

    /** The roof between two tents, from the lower edge of the side that looks on it to that of the next. */
    private record Valley(RackRows rows, int count, double widthM) implements RoofPieces {

        Valley(RackRows rows, int strips) {
            this(rows, strips, rows.pitchM() - rows.coveredM());
        }

        private double fromM(int strip) {
            return strip * widthM / count;
        }

        /** Of a strip its ends seen from the foot and the ridge of this side: (a to ridge + b to foot − a to foot − b to ridge)/2. */
        private double exchangeM(double from, double to) {
            return (ridge(from) + to - from - ridge(to)) / 2;
        }

        private double ridge(double placeM) {
            return Math.hypot(placeM + rows.runM(), rows.riseM());
        }

        private double ofStrip(double exchangeM) {
            return widthM > 0 ? exchangeM * count / widthM : 0;
        }

        @Override
        public double skyView(int strip) {
            return 1 - viewOfFront(strip);
        }

        @Override
        public double viewOfFront(int strip) {
            double from = fromM(strip);
            double to = fromM(strip + 1);
            return ofStrip(exchangeM(from, to) + exchangeM(widthM - to, widthM - from));
        }

        @Override
        public double viewOfBack(int strip) {
            return 0;
        }

        @Override
        public double frontView(int strip) {
            return exchangeM(fromM(strip), fromM(strip + 1)) / rows.chordM();
        }

        @Override
        public double backView(int strip) {
            return 0;
        }

        @Override
        public void litShares(double profileDeg, double[] lit) {
            double profile = Math.toRadians(profileDeg);
            double slant = Math.cos(profile) / Math.max(LEVEL, Math.sin(profile));
            // the shadow of the ridge before ends here, that of the own ridge there
            double before = widthM + rows.runM() - rows.riseM() * slant;
            double behind = -rows.runM() - rows.riseM() * slant;
            for (int i = 0; i < count; i++) {
                double from = fromM(i);
                double to = fromM(i + 1);
                double bright = Math.min(to, before) - Math.max(from, behind);
                lit[i] = to > from ? Math.max(0, bright) / (to - from) : 0;
            }
        }
    }
}
