package dev.warmlane.roof;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of banks across a surface, before it is drawn.
 *
 * @param from the v of its near side
 * @param depthM its depth, headers and all, m
 * @param panelLengthM the length of its panels, m
 * @param banks where its banks begin, u, and how many panels each has
 */
record Row(double from, double depthM, double panelLengthM, List<Start> banks) {

    /** A bank: where it begins and how many panels it has. */
    record Start(double u, int panels) {}

    /** What a bank fewer is worth at the same area, m²: enough to decide where areas are equal. */
    private static final double BANK_WORTH_M2 = 1e-3;

    int panels() {
        return banks.stream().mapToInt(Start::panels).sum();
    }

    /** What it is worth: its area, and a little less with more banks. */
    double worth(PanelRules rules) {
        return panels() * rules.widthM() * panelLengthM - BANK_WORTH_M2 * banks.size();
    }

    /**
     * The most panels in a strip.
     *
     * @param area where panels may be
     * @param from where the strip begins, v
     * @param depthM its depth, m
     * @param panelLengthM the length of its panels, m
     * @param even whether the banks of a gap are as even as can be, or as full
     * @param splits whether mats are split around small obstacles
     */
    static Row of(
            FreeArea area,
            PanelRules rules,
            double from,
            double depthM,
            double panelLengthM,
            boolean even,
            boolean splits) {
        double to = from + depthM;
        List<Blocked> ignored = new ArrayList<>();
        for (Blocked one : splits ? area.splittable(rules.splitsAroundM()) : List.<Blocked>of()) {
            if (one.reaches(from, to) && one.isWithin(from + rules.headerM(), to - rules.farHeaderM())) {
                ignored.add(one);
            }
        }
        while (true) {
            List<Start> banks = new ArrayList<>();
            double free = Double.NEGATIVE_INFINITY;
            for (double[] gap : area.free(from, to, ignored)) {
                free = Math.max(free, fill(Math.max(gap[0], free), gap[1], rules, even, banks));
            }
            boolean removed = ignored.removeIf(one ->
                    banks.stream().anyMatch(bank -> one.straddles(bank.u, bank.u + bank.panels * rules.widthM())));
            if (!removed) {
                return new Row(from, depthM, panelLengthM, List.copyOf(banks));
            }
        }
    }

    /** Fills a gap with banks; tells from where on the next may stand, a walkway away from the last. */
    private static double fill(double from, double to, PanelRules rules, boolean even, List<Start> banks) {
        double width = rules.widthM();
        double length = to - from + Blocked.ROUNDING_M;
        double full = rules.panelsPerBank() * width;
        int fullBanks = (int) Math.max(0, Math.floor((length + rules.walkwayM()) / (full + rules.walkwayM())));
        double left = length - fullBanks * (full + rules.walkwayM());
        int rest = Math.min(rules.panelsPerBank() - 1, (int) Math.max(0, Math.floor(left / width)));
        int panels = fullBanks * rules.panelsPerBank() + rest;
        int count = fullBanks + (rest > 0 ? 1 : 0);
        double u = from;
        for (int bank = 0; bank < count; bank++) {
            int here = even
                    ? panels / count + (bank < panels % count ? 1 : 0)
                    : bank < fullBanks ? rules.panelsPerBank() : rest;
            banks.add(new Start(u, here));
            u += here * width + rules.walkwayM();
        }
        return count == 0 ? Double.NEGATIVE_INFINITY : u;
    }

    /**
     * Its banks as they lie on the surface, both sides of a tent one after the other.
     *
     * @param number that of its first row of banks
     * @param sides 1, or 2 for the sides of a tent, of which the far one stands mirrored
     */
    List<Bank> drawn(int number, Frame frame, PanelRules rules, double foreshortening, int sides) {
        double deep = depthM / sides;
        double near = rules.headerM() * foreshortening / deep;
        double far = rules.farHeaderM() * foreshortening / deep;
        List<Bank> drawn = new ArrayList<>();
        for (Start bank : banks) {
            for (int side = 0; side < sides; side++) {
                RoofPoint corner = frame.point(bank.u, from + side * deep);
                drawn.add(new Bank(
                        number + side,
                        new Patch(corner, frame.alongDeg(), bank.panels * rules.widthM(), deep),
                        bank.panels,
                        panelLengthM,
                        rules.widthM(),
                        side == 0 ? near : far,
                        side == 0 ? far : near));
            }
        }
        return drawn;
    }
}
