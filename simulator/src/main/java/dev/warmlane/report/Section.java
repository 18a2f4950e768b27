package dev.warmlane.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A part of a report under one heading. Immutable: what adds to it returns another.
 *
 * @param heading its heading
 * @param places where it is shown
 * @param parts what stands in it, in its order
 */
public record Section(String heading, Set<Place> places, List<Part> parts) {

    /**
     * A block of a section.
     *
     * @param block the block
     * @param places where it is shown
     * @param stay whether it may go to the next sheet where the first one, which is to be one sheet of paper, is full
     */
    public record Part(Block block, Set<Place> places, Stay stay) {}

    /** How firmly a part holds its place on the first sheet. */
    public enum Stay {
        /** It goes to the next sheet where the first is full; what comes later goes first. */
        WHERE_ROOM,
        /** The sheet is set tighter before it goes. */
        TIGHTLY,
        /** It never goes. */
        ALWAYS
    }

    /** Keeps its own copies. */
    public Section {
        places = Set.copyOf(places);
        parts = List.copyOf(parts);
    }

    /** A section with nothing in it yet. */
    static Section of(String heading, Set<Place> places) {
        return new Section(heading, places, List.of());
    }

    /** With blocks that are shown wherever it is. */
    Section with(Block... blocks) {
        Section section = this;
        for (Block block : blocks) {
            section = section.with(places, block);
        }
        return section;
    }

    /** With a block that is shown in some places only. */
    Section with(Set<Place> only, Block block) {
        List<Part> more = new ArrayList<>(parts);
        more.add(new Part(block, only, Stay.ALWAYS));
        return new Section(heading, places, more);
    }

    /** The same, each block free to go to the next sheet where the first one is full. */
    Section givingWay() {
        return staying(Stay.WHERE_ROOM);
    }

    /** The same, each block held on the first sheet so firmly. */
    Section staying(Stay stay) {
        return new Section(
                heading,
                places,
                parts.stream()
                        .map(part -> new Part(part.block, part.places, stay))
                        .toList());
    }

    /** With paragraphs, none of them empty. */
    Section words(String... paragraphs) {
        return words(List.of(paragraphs));
    }

    /** With paragraphs; empty ones are left out. */
    Section words(List<String> paragraphs) {
        Section section = this;
        for (String paragraph : paragraphs) {
            section = paragraph.isEmpty() ? section : section.with(new Block.Words(paragraph));
        }
        return section;
    }

    /** With a list; nothing where it is empty. */
    Section points(List<String> points) {
        return points.isEmpty() ? this : with(new Block.Points(points));
    }

    /** What of it is shown in a place, in its order. */
    public List<Block> at(Place place) {
        return parts.stream()
                .filter(part -> part.places.contains(place))
                .map(Part::block)
                .toList();
    }
}
