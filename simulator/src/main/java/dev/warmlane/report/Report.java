package dev.warmlane.report;

import dev.warmlane.scenario.Letterhead;
import dev.warmlane.units.Notation;
import java.util.List;
import java.util.function.Supplier;

/**
 * What is to be handed over, before anybody has decided how: title, sections in their order, and tables for machines.
 * {@link dev.warmlane.report.write} makes text, page and files of it.
 *
 * @param name the name of its files, without an ending
 * @param title its title
 * @param place where and when it is; empty for nothing
 * @param letterhead who hands it over, and to whom
 * @param notation how numbers are written in it
 * @param sections its sections in their order, whatever the place
 * @param data its tables for csv files
 */
public record Report(
        String name,
        String title,
        String place,
        Letterhead letterhead,
        Notation notation,
        List<Section> sections,
        List<Data> data) {

    /**
     * A table for a csv file; made when it is asked for, since it may be long.
     *
     * @param name the name of the file, without an ending
     * @param table makes the table
     */
    public record Data(String name, Supplier<Table> table) {}

    /** Without a letterhead. */
    public Report(String name, String title, String place, Notation notation, List<Section> sections, List<Data> data) {
        this(name, title, place, Letterhead.NONE, notation, sections, data);
    }

    /** Keeps its own copies of the lists; a section without anything in it is left out. */
    public Report {
        sections = sections.stream().filter(s -> !s.parts().isEmpty()).toList();
        data = List.copyOf(data);
    }

    /** The sections that are shown in a place, in their order. */
    public List<Section> at(Place place) {
        return sections.stream().filter(s -> !s.at(place).isEmpty()).toList();
    }

    /** All pictures in their order. */
    public List<Block.Picture> pictures() {
        return sections.stream()
                .flatMap(section -> section.parts().stream())
                .flatMap(part -> part.block().picture().stream())
                .toList();
    }

    /** All plans in their order. */
    public List<Block.Plan> plans() {
        return sections.stream()
                .flatMap(section -> section.parts().stream())
                .flatMap(part -> part.block().plan().stream())
                .toList();
    }
}
