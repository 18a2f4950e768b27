package dev.warmlane.roof;

import java.util.List;

/**
 * Collectors that are to be laid on a drawn roof.
 *
 * @param surfaces the surfaces that they may be on; none where no surface is drawn for them
 * @param laying how they are laid
 * @param areaM2 how much of them, m²
 */
public record Wanted(List<Surface> surfaces, Laying laying, double areaM2) {

    /** Keeps its own copy of the list. */
    public Wanted {
        surfaces = List.copyOf(surfaces);
    }

    /** Whether they may lie on a surface that others may lie on too. */
    public boolean sharesWith(Wanted other) {
        return surfaces.stream().anyMatch(other::mayBeOn);
    }

    private boolean mayBeOn(Surface surface) {
        return surfaces.stream().anyMatch(one -> one.name().equals(surface.name()));
    }
}
