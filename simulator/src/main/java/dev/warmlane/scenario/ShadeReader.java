package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.pool.Screen;
import dev.warmlane.site.Horizon;
import dev.warmlane.site.HorizonFile;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what hides sun and sky from collectors and pool. */
final class ShadeReader {

    private ShadeReader() {}

    /** The horizon around the collectors. */
    static Horizon horizon(Section s, Path scenarioFile) {
        return horizon(s, ShadeKeys.FILE, ShadeKeys.HEIGHTS, Horizon.LEVEL, scenarioFile);
    }

    /** A pool under the sky that is left to it; as it is where anything is wrong. */
    static @Nullable Pool under(
            @Nullable Pool pool, Section s, List<Document.Group> beside, Horizon collectors, Path scenarioFile) {
        Horizon own = horizon(s, ShadeKeys.POOL_FILE, ShadeKeys.POOL_HEIGHTS, collectors, scenarioFile);
        List<Screen> screens = new ArrayList<>();
        for (int i = 0; i < beside.size(); i++) {
            Screen screen = screen(beside.get(i).main(), i);
            if (screen != null) {
                screens.add(screen);
            }
        }
        PoolSkyline skyline = beside.isEmpty()
                ? new PoolSkyline(own, screens)
                : beside.get(0).main().build(() -> new PoolSkyline(own, screens));
        if (pool == null || skyline == null) {
            return pool;
        }
        return pool.withSetting(pool.setting().match(outdoor -> outdoor.withSkyline(skyline), indoor -> {
            beside.forEach(one -> one.main().error("shades no pool with setting = \"indoor\"; leave it out"));
            s.refuse("allowed with setting = \"outdoor\" only", ShadeKeys.POOL_FILE, ShadeKeys.POOL_HEIGHTS);
            return indoor;
        }));
    }

    private static @Nullable Screen screen(Section s, int index) {
        String name = s.has(ShadeKeys.NAME) ? s.get(ShadeKeys.NAME) : "beside_pool " + (index + 1);
        double direction = s.get(ShadeKeys.DIRECTION);
        double distance = s.get(ShadeKeys.DISTANCE);
        double breadth = s.get(ShadeKeys.BREADTH);
        double height = s.get(ShadeKeys.HEIGHT);
        return s.build(() -> new Screen(name, direction, distance, breadth, height));
    }

    private static Horizon horizon(
            Section s, Key<String> file, Key<Horizon> heights, Horizon otherwise, Path scenarioFile) {
        if (!s.has(file)) {
            return s.has(heights) ? s.get(heights) : otherwise;
        }
        s.refuse("not allowed with " + file.name() + "; give one of them", heights);
        return s.sound(file) ? read(s, file, scenarioFile) : otherwise;
    }

    private static Horizon read(Section s, Key<String> key, Path scenarioFile) {
        String named = s.get(key);
        String quoted = Printable.quote(named);
        try {
            return HorizonFile.read(scenarioFile.resolveSibling(named));
        } catch (NoSuchFileException | InvalidPathException e) {
            s.error(key, "no such file: " + quoted + ", seen from the folder of the scenario file");
        } catch (FileSystemException e) {
            s.error(key, "cannot be read: " + quoted + " " + e.getReason());
        } catch (IOException e) {
            s.error(key, "cannot be read: " + quoted);
        } catch (IllegalArgumentException e) {
            s.error(
                    key,
                    PlaceReader.isNear(s, key, scenarioFile)
                            ? quoted + " " + e.getMessage()
                            : quoted + " is no horizon; put it beside the scenario to be told what is wrong");
        }
        return Horizon.LEVEL;
    }

    /** Writes it again. */
    static void write(TomlText out, Horizon collectors, PoolSkyline pool) {
        boolean same = pool.horizon().equals(collectors);
        if (!collectors.heights().isEmpty() || !same) {
            out.section("[horizon]");
            if (!collectors.heights().isEmpty()) {
                out.key(ShadeKeys.HEIGHTS, collectors);
            }
            if (!same) {
                out.key(ShadeKeys.POOL_HEIGHTS, pool.horizon().heights().isEmpty() ? Horizon.even(0) : pool.horizon());
            }
        }
        pool.screens().forEach(screen -> out.section("[[beside_pool]]")
                .key(ShadeKeys.NAME, screen.name())
                .key(ShadeKeys.DIRECTION, screen.directionDeg())
                .key(ShadeKeys.DISTANCE, screen.distanceM())
                .key(ShadeKeys.BREADTH, screen.breadthM())
                .key(ShadeKeys.HEIGHT, screen.heightM()));
    }
}
