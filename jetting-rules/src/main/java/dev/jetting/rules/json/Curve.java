package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonMappingException;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.rules.risk.RidingProfile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A curve through points, for which the bare array of its points may be written. That is read,
 * never written.
 *
 * @param type the curve
 * @param point its points
 * @param through from the points to the curve
 * @param <P> the type of the points
 */
record Curve<P>(Class<?> type, Class<P> point, Function<List<P>, Object> through) {

  private static final List<Curve<?>> ALL =
      List.of(
          new Curve<>(RpmCurve.class, RpmCurve.Point.class, RpmCurve::new),
          new Curve<>(MixtureNeed.class, MixtureNeed.Point.class, MixtureNeed::new),
          new Curve<>(RidingProfile.class, RidingProfile.Point.class, RidingProfile::new));

  static Optional<Curve<?>> of(Class<?> type) {
    return ALL.stream().filter(curve -> curve.type().equals(type)).findFirst();
  }

  /** Reads the array that the parser stands at. */
  Object read(JsonParser in, DeserializationContext context) throws IOException {
    List<P> points = new ArrayList<>();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      try {
        points.add(
            in.hasToken(JsonToken.VALUE_NULL)
                ? point.cast(context.handleUnexpectedToken(point, in))
                : context.readValue(in, point));
      } catch (JsonMappingException | IllegalArgumentException e) {
        throw JsonMappingException.wrapWithPath(e, points, points.size());
      }
    }
    return through.apply(points);
  }
}
