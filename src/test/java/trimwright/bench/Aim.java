package trimwright.bench;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a benchmark is to be measured by, for the table that {@link BenchTable} makes. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Aim.All.class)
@interface Aim {

    /** The most that one operation should take, ms; not a number where nothing is aimed at. */
    double ms() default Double.NaN;

    /** The value of the benchmark's parameter for which that holds; empty for any. */
    String at() default "";

    /** The benchmark of the same class that is its baseline; empty for none. */
    String baseline() default "";

    /** Holds several of them. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.METHOD)
    @interface All {
        Aim[] value();
    }
}
