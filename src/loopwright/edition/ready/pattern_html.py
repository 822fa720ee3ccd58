"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors

from jinja2.runtime import LoopContext, Macro, Markup, Namespace, TemplateNotFound, TemplateReference, TemplateRuntimeError, Undefined, escape, identity, internalcode, markup_join, missing, str_join
name = 'pattern.html'

def root(context, missing=missing):
    resolve = context.resolve_or_missing
    undefined = environment.undefined
    concat = environment.concat
    cond_expr_undefined = Undefined
    if 0: yield None
    l_0_doc = resolve('doc')
    l_0_css = resolve('css')
    pass
    yield '<!DOCTYPE html>\n<html lang="'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'language'))
    yield '">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="light dark">\n<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\''
    yield escape(('; img-src data:' if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth') else cond_expr_undefined("the inline if-expression on line 7 in 'pattern.html' evaluated to false and no else section was defined.")))
    yield '">\n<meta name="referrer" content="no-referrer">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield '<meta name="author" content="'
        yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'))
        yield '">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'):
        pass
        yield '<meta name="description" content="'
        yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'))
        yield '">\n'
    yield '<title>'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'))
    yield '</title>\n<style>\n'
    yield escape((undefined(name='css') if l_0_css is missing else l_0_css))
    yield '</style>\n</head>\n<body>\n<main>\n'
    template = environment.get_template('parts.html', 'pattern.html')
    gen = template.root_render_func(template.new_context(context.get_all(), True, {}))
    try:
        for event in gen:
            yield event
    finally: gen.close()
    yield '</main>\n</body>\n</html>\n'

blocks = {}
debug_info = '2=14&7=16&9=18&10=21&12=23&13=26&15=29&17=31&21=33'

MARK = '3.1.6 678 24df3a1a'
