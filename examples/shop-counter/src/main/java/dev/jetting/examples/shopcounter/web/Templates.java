package dev.jetting.examples.shopcounter.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.Map;

/** The pages; whatever a visitor typed is escaped where it is shown. */
final class Templates {

  private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

  void show(Context request, String name, Map<String, Object> values) {
    StringOutput page = new StringOutput(16_384);
    engine.render(name, values, page);
    request.html(page.toString());
  }
}
