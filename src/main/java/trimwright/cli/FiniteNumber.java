package trimwright.cli;

import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number as a person types it: digits with a decimal point, no infinity, no not-a-number. */
final class FiniteNumber implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        double value;
        try {
            value = new BigDecimal(text.strip()).doubleValue();
        } catch (NumberFormatException e) {
            String advice = text.indexOf(',') >= 0 ? "; write it with a decimal point: " + text.replace(',', '.') : "";
            throw new TypeConversionException("'" + text + "' is no number" + advice);
        }
        if (Double.isInfinite(value)) {
            throw new TypeConversionException("'" + text + "' is too large a number");
        }
        return value;
    }
}
