package dev.warmlane.scenario;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.RowSpacing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the sections {@code [[mountings]]}. */
final class MountingReader {

    /** The most mountings, each of which takes some 10 MB of a study; own choice. */
    private static final int MOST = 30;

    private MountingReader() {}

    /**
     * The mountings.
     *
     * @param groups their sections
     * @param priced whether there is a section prices, which says in what currency theirs are
     * @param drawn what a drawn roof says of them
     */
    static List<MountingOption> options(List<Document.Group> groups, boolean priced, DrawnCollectors drawn) {
        List<MountingOption> options = new ArrayList<>();
        Set<String> names = new HashSet<>();
        if (groups.size() > MOST) {
            groups.get(MOST).main().error("is one of " + groups.size() + "; allowed: at most " + MOST);
        }
        for (Document.Group group : groups.subList(0, Math.min(MOST, groups.size()))) {
            Section s = group.main();
            String name = s.get(MountingKeys.NAME);
            if (s.has(MountingKeys.NAME) && s.sound(MountingKeys.NAME) && !names.add(name)) {
                s.error(MountingKeys.NAME, "another mounting is called \"" + name + "\" too");
            }
            if (!priced) {
                s.refuse("needs a section [prices], which says in what currency", MountingKeys.PRICE);
            }
            MountingOption option = option(s, name, drawn);
            if (option != null) {
                options.add(s.has(MountingKeys.PRICE) ? option.pricedPerM2(s.get(MountingKeys.PRICE)) : option);
            }
        }
        return options;
    }

    private static @Nullable MountingOption option(Section s, String name, DrawnCollectors drawn) {
        CollectorKeys.MountingKind kind = s.get(CollectorKeys.MOUNTING);
        if (!s.has(CollectorKeys.MOUNTING) || !s.sound(CollectorKeys.MOUNTING)) {
            return null;
        }
        return switch (kind) {
            case FLAT -> flat(s, name);
            case RACK, TENT -> racks(s, name, drawn, kind == CollectorKeys.MountingKind.TENT);
            case PITCHED, GABLE -> pitched(s, name, drawn, kind == CollectorKeys.MountingKind.GABLE);
        };
    }

    private static @Nullable MountingOption flat(Section s, String name) {
        s.refuse(
                "not allowed for mats lying flat",
                CollectorKeys.TILT,
                CollectorKeys.AZIMUTH,
                CollectorKeys.SLOPE_LENGTH,
                MountingKeys.ROOF_AREA);
        refuseRackKeys(s);
        double gap = s.get(CollectorKeys.GAP);
        return s.build(() -> new MountingOption.Flat(name, new Mounting.FlatOnRoof(gap)));
    }

    private static @Nullable MountingOption pitched(Section s, String name, DrawnCollectors drawn, boolean gable) {
        refuseRackKeys(s);
        if (gable) {
            drawn.refuseGable(s);
        }
        double tilt = s.get(CollectorKeys.TILT);
        double azimuth = s.get(CollectorKeys.AZIMUTH);
        double slope = s.get(CollectorKeys.SLOPE_LENGTH);
        double gap = s.get(CollectorKeys.GAP);
        OptionalDouble area = s.has(MountingKeys.ROOF_AREA)
                ? OptionalDouble.of(s.get(MountingKeys.ROOF_AREA))
                : OptionalDouble.empty();
        return s.build(() -> new MountingOption.Pitched(
                name, new Mounting.FlushOnPitchedRoof(tilt, azimuth, slope, gap, gable), area));
    }

    private static @Nullable MountingOption racks(Section s, String name, DrawnCollectors drawn, boolean tents) {
        s.refuse("not allowed for racks, which have a clearance", CollectorKeys.GAP);
        s.refuse("allowed for pitched roofs only", CollectorKeys.SLOPE_LENGTH, MountingKeys.ROOF_AREA);
        Rack rack = CollectorReader.rack(s, MountingKeys.CHORD, MountingKeys.CLEARANCE);
        Mounting.Back back = CollectorReader.back(s);
        double innerWind = CollectorReader.innerWind(s, false);
        RowSpacing spacing = spacing(s, rack, drawn, tents);
        drawn.askew(s);
        MountingOption.RoofSide along = s.get(MountingKeys.ROWS_ALONG);
        Mounting.WindRun run = CollectorReader.windRun(s, rack);
        return s.build(
                () -> new MountingOption.Racks(name, rack, back, run, innerWind, spacing, along).withTents(tents));
    }

    private static RowSpacing spacing(Section s, Rack rack, DrawnCollectors drawn, boolean tents) {
        if (!s.has(MountingKeys.PITCH)) {
            SolarHoursKind.SolarHours hours = s.get(MountingKeys.SPACING);
            return new RowSpacing.Unshaded(
                    hours.from(),
                    hours.to(),
                    s.has(MountingKeys.SPACING_DATE)
                            ? Optional.of(s.get(MountingKeys.SPACING_DATE))
                            : Optional.empty());
        }
        s.refuse("not allowed with pitch; give pitch or spacing", MountingKeys.SPACING, MountingKeys.SPACING_DATE);
        double pitch = s.get(MountingKeys.PITCH);
        CollectorReader.checkPitch(s, MountingKeys.PITCH, pitch, rack, tents);
        drawn.leaves(s, MountingKeys.PITCH, rack, pitch, tents);
        return new RowSpacing.FixedPitch(pitch);
    }

    private static void refuseRackKeys(Section s) {
        s.refuse(
                "allowed for racks only",
                MountingKeys.CHORD,
                MountingKeys.CLEARANCE,
                CollectorKeys.BACK,
                CollectorKeys.BOARD_U_VALUE,
                CollectorKeys.WIND_RUN,
                CollectorKeys.INNER_WIND,
                MountingKeys.SPACING,
                MountingKeys.SPACING_DATE,
                MountingKeys.PITCH,
                MountingKeys.ROWS_ALONG);
    }
}
