package trimwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The name of a file or folder: not empty, which Java would take for the folder at hand, and one that the system can have. */
final class FileName implements ITypeConverter<Path> {

    @Override
    public Path convert(String text) {
        if (text.isBlank()) {
            throw new TypeConversionException("the name is empty");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("'" + text + "' cannot be the name of a file here");
        }
    }
}
