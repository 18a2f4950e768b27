package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.List;

/**
 * What banks that lie on a surface already take of it for others that are to be laid beside them: their place, a walkway
 * around it, and behind racks the way that there is to their own next row. So nothing is laid between rows of racks, nor
 * nearer behind the last of them than its next row would stand. The same way is kept from both sides: by what lies there,
 * and by what is to be laid.
 */
final class Taken {

    private final PanelRules rules;
    private final Frame frame;

    private Taken(PanelRules rules, Frame frame) {
        this.rules = rules;
        this.frame = frame;
    }

    /**
     * Where nothing can be laid on a surface any more.
     *
     * @param before what has been laid
     * @param surface the surface
     * @param rules the rules
     * @param next how the next are laid
     * @param frame the frame that they are laid in
     */
    static List<Blocked> of(List<RoofLayout> before, Surface surface, PanelRules rules, Laying next, Frame frame) {
        Taken taken = new Taken(rules, frame);
        List<Blocked> blocked = new ArrayList<>();
        for (RoofLayout layout : before) {
            Laying laying = layout.laying();
            for (SurfaceLayout on : layout.surfaces()) {
                if (on.surface().name().equals(surface.name())) {
                    Frame own = new Frame(on.alongDeg());
                    for (Bank bank : on.banks()) {
                        blocked.add(taken.around(bank, own, laying.frontM(rules), laying.backM(rules)));
                        // where a bank that is to be laid would have this one within its own way
                        blocked.add(taken.around(bank, frame, next.backM(rules), next.frontM(rules)));
                    }
                }
            }
        }
        return blocked;
    }

    /** A bank with a walkway at both ends of a frame's rows and other ways before and behind them. */
    private Blocked around(Bank bank, Frame rows, double beforeM, double behindM) {
        List<double[]> corners = new ArrayList<>();
        for (RoofPoint corner : bank.place().corners()) {
            for (double along : new double[] {-rules.walkwayM(), rules.walkwayM()}) {
                for (double across : new double[] {-beforeM, behindM}) {
                    corners.add(frame.from(rows, rows.u(corner) + along, rows.v(corner) + across));
                }
            }
        }
        return Blocked.of(Shapes.hull(corners));
    }
}
