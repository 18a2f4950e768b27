package dev.warmlane.examples;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder; an empty one would silently be the folder that the command runs in. */
final class PathConverter implements ITypeConverter<Path> {

    @Override
    public Path convert(String text) {
        if (text.isBlank()) {
            throw new TypeConversionException("the name is empty");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("this is no name of a file on this machine: " + e.getReason());
        }
    }
}
