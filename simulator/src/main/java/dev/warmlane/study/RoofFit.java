package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a mounting option stands on a roof.
 *
 * <p>Collectors may cover the usable share of the flat roof. Mats fill that area. For racks it is a rectangle of the
 * roof's proportions, both sides times the root of the share; rows run along one side, each the chord's run on the roof
 * deep, the first at the edge and the others a pitch behind it. With panels of a given area only whole ones count: a
 * panel stands with its length up the slope, so it is panel area over chord wide.
 *
 * <p>Where the roof is drawn, {@link Installation#plan}, none of this is taken: whole panels are laid between its edges and
 * obstacles, mats and racks by the same rules, {@link RoofLayout}. Rows run across the direction that the racks face.
 *
 * @param areaM2 collector area, m²
 * @param panels number of panels; nothing where the area is not made of panels
 * @param mounting how they are mounted, for racks with pitch and rows
 * @param rowLengthM the longest row that has room, m; 0 where there are no rows
 * @param fits whether there is room for it
 * @param layout how it is laid, on a roof that is drawn and has room for it
 */
public record RoofFit(
        double areaM2,
        OptionalInt panels,
        Mounting mounting,
        double rowLengthM,
        boolean fits,
        Optional<RoofLayout> layout) {

    /** Keeps rounding from losing a panel or a row that just fits. */
    private static final double ROUNDING = 1e-9;

    /**
     * The most of an option that fits.
     *
     * @param installation its roof and season, and its first array for the panels
     * @param latitudeDeg latitude of the site, degrees
     * @param option the option
     * @return nothing where not even one panel fits
     * @throws IllegalArgumentException if the rows cannot be spaced as the option asks
     */
    public static Optional<RoofFit> most(Installation installation, double latitudeDeg, MountingOption option) {
        if (installation.plan().isPresent()) {
            return new DrawnFit(installation, installation.plan().get(), latitudeDeg).most(option);
        }
        double panel = panelAreaM2(installation);
        double roof = installation.roof().usableAreaM2();
        return option.match(
                flat -> mostLying(flat.mounting(), roof, panel),
                racks -> {
                    Rows rows = Rows.of(installation, latitudeDeg, racks, panel);
                    double area = rows.most * rows.areaOfOneM2;
                    return enough(area) ? Optional.of(rows.fit(area, rows.most, panel)) : Optional.empty();
                },
                pitched -> mostLying(pitched.mounting(), pitched.roofAreaM2().orElse(roof), panel));
    }

    private static Optional<RoofFit> mostLying(Mounting mounting, double limitM2, double panelM2) {
        double area = panelM2 > 0 ? Math.floor(limitM2 / panelM2 + ROUNDING) * panelM2 : limitM2;
        return enough(area)
                ? Optional.of(new RoofFit(area, panels(area, panelM2), mounting, 0, true, Optional.empty()))
                : Optional.empty();
    }

    /**
     * An option with a given area, in as few rows as it takes, whether there is room for it or not.
     *
     * @throws IllegalArgumentException if the rows cannot be spaced as the option asks, or would be more than 1000
     */
    public static RoofFit ofArea(Installation installation, double latitudeDeg, MountingOption option, double areaM2) {
        if (installation.plan().isPresent()) {
            return new DrawnFit(installation, installation.plan().get(), latitudeDeg).ofArea(option, areaM2);
        }
        double panel = panelAreaM2(installation);
        double roof = installation.roof().usableAreaM2();
        return option.match(
                flat -> lying(flat.mounting(), roof, areaM2, panel),
                racks -> {
                    Rows rows = Rows.of(installation, latitudeDeg, racks, panel);
                    // a panel longer than the roof still stands somewhere: one to a row
                    double one = rows.areaOfOneM2 > 0 ? rows.areaOfOneM2 : panel;
                    return rows.fit(areaM2, (int) Math.max(1, Math.ceil(areaM2 / one - ROUNDING)), panel);
                },
                pitched -> lying(pitched.mounting(), pitched.roofAreaM2().orElse(roof), areaM2, panel));
    }

    private static RoofFit lying(Mounting mounting, double limitM2, double areaM2, double panelM2) {
        return new RoofFit(
                areaM2, panels(areaM2, panelM2), mounting, 0, areaM2 <= limitM2 * (1 + ROUNDING), Optional.empty());
    }

    /** Rows of racks; nothing for what does not stand in rows. */
    public Optional<Mounting.OpenRack> racks() {
        return mounting.racks();
    }

    private static boolean enough(double areaM2) {
        return areaM2 >= CollectorArray.AREA.lowest();
    }

    private static double panelAreaM2(Installation installation) {
        return installation.arrays().stream()
                .findFirst()
                .map(CollectorArray::panelAreaM2)
                .orElse(0.0);
    }

    private static OptionalInt panels(double areaM2, double panelAreaM2) {
        return panelAreaM2 > 0 ? OptionalInt.of((int) Math.round(areaM2 / panelAreaM2)) : OptionalInt.empty();
    }

    /** The rows that there is room for. */
    private record Rows(MountingOption.Racks racks, double pitchM, double lengthM, int most, double areaOfOneM2) {

        static Rows of(Installation installation, double latitudeDeg, MountingOption.Racks racks, double panelM2) {
            Roof roof = installation.roof();
            double side = Math.sqrt(roof.usableShare());
            double longer = side * Math.max(roof.lengthM(), roof.widthM());
            double shorter = side * Math.min(roof.lengthM(), roof.widthM());
            boolean along = racks.along() == MountingOption.RoofSide.LONG;
            double length = along ? longer : shorter;
            double depth = along ? shorter : longer;
            double pitch = racks.pitchM(latitudeDeg, installation.season());
            double run = racks.coveredM();
            int most = depth < run * (1 - ROUNDING)
                    ? 0
                    : (int) Math.min(RackRows.ROWS.highest(), 1 + Math.floor((depth - run) / pitch + ROUNDING));
            double oneSide = panelM2 > 0
                    ? Math.floor(length / (panelM2 / racks.chordM()) + ROUNDING) * panelM2
                    : length * racks.chordM();
            double perRow = racks.tents() ? 2 * oneSide : oneSide;
            return new Rows(racks, pitch, length, most, perRow);
        }

        RoofFit fit(double areaM2, int rows, double panelM2) {
            return new RoofFit(
                    areaM2,
                    panels(areaM2, panelM2),
                    racks.inRows(pitchM, rows),
                    lengthM,
                    rows <= most && areaOfOneM2 > 0,
                    Optional.empty());
        }
    }
}
