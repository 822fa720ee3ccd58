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
    l_0_web = resolve('web')
    l_0_css = resolve('css')
    l_0_main = resolve('main')
    try:
        t_1 = environment.filters['joined']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'joined' found.")
    try:
        t_2 = environment.filters['length']
    except KeyError:
        @internalcode
        def t_2(*unused):
            raise TemplateRuntimeError("No filter named 'length' found.")
    pass
    yield '<!DOCTYPE html>\n<html lang="'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'language'))
    yield '"'
    if (undefined(name='web') if l_0_web is missing else l_0_web):
        pass
        yield ' data-units="both"'
    yield '>\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="light dark">\n<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\''
    if (undefined(name='web') if l_0_web is missing else l_0_web):
        pass
        yield '; script-src '
        yield escape(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'allowed'))
        yield "; base-uri 'none'; form-action 'none'"
    yield escape(('; img-src data:' if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth') else cond_expr_undefined("the inline if-expression on line 7 in 'pattern.html' evaluated to false and no else section was defined.")))
    yield '">\n<meta name="referrer" content="no-referrer">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield '<meta name="author" content="'
        yield escape(t_1(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer')))
        yield '">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'):
        pass
        yield '<meta name="description" content="'
        yield escape(t_1(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary')))
        yield '">\n'
    yield '<title>'
    yield escape(t_1(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title')))
    yield '</title>\n<style>\n'
    yield escape((undefined(name='css') if l_0_css is missing else l_0_css))
    yield '</style>\n'
    if (undefined(name='web') if l_0_web is missing else l_0_web):
        pass
        yield '<style>\n'
        yield escape(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'css'))
        yield '</style>\n<script type="application/ld+json">'
        yield escape(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'structured'))
        yield '</script>\n'
    yield '</head>\n<body>\n<main id="pattern">'
    yield escape((undefined(name='main') if l_0_main is missing else l_0_main))
    yield '</main>\n'
    if (undefined(name='web') if l_0_web is missing else l_0_web):
        pass
        yield '<form class="switches" id="switches" aria-label="'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'switches'))
        yield '" hidden>\n'
        if (t_2(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'names')) > 8):
            pass
            yield '<p><label for="size">'
            yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'size'))
            yield '</label> <select id="size" name="size">\n<option value="">'
            yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'all'))
            yield '</option>\n'
            l_1_loop = missing
            for l_1_name, l_1_loop in LoopContext(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'names'), undefined):
                _loop_vars = {}
                pass
                yield '<option value="'
                yield escape(environment.getattr(l_1_loop, 'index0'))
                yield '">'
                yield escape(l_1_name)
                yield '</option>\n'
            l_1_loop = l_1_name = missing
            yield '</select></p>\n'
        elif environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'names'):
            pass
            yield '<fieldset>\n<legend>'
            yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'size'))
            yield '</legend>\n<label><input type="radio" name="size" value="" checked> <span>'
            yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'all'))
            yield '</span></label>\n'
            l_1_loop = missing
            for l_1_name, l_1_loop in LoopContext(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'names'), undefined):
                _loop_vars = {}
                pass
                yield '<label><input type="radio" name="size" value="'
                yield escape(environment.getattr(l_1_loop, 'index0'))
                yield '"> <span>'
                yield escape(l_1_name)
                yield '</span></label>\n'
            l_1_loop = l_1_name = missing
            yield '</fieldset>\n'
        yield '<fieldset>\n<legend>'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'units'))
        yield '</legend>\n'
        for l_1_kind in ('both', 'metric', 'inches'):
            _loop_vars = {}
            pass
            yield '<label><input type="radio" name="units" value="'
            yield escape(l_1_kind)
            yield '"'
            yield escape((' checked' if (l_1_kind == 'both') else cond_expr_undefined("the inline if-expression on line 48 in 'pattern.html' evaluated to false and no else section was defined.")))
            yield '> <span>'
            yield escape(environment.getitem(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), l_1_kind))
            yield '</span></label>\n'
        l_1_kind = missing
        yield '</fieldset>\n<p class="begin"><button type="button" id="start">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'start'))
        yield '</button> <label class="awake" hidden><input type="checkbox" name="awake"> <span>'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'awake'))
        yield '</span></label></p>\n<p class="quiet" id="told" role="status"></p>\n<p id="older" hidden><span></span> <button type="button">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'adopt'))
        yield '</button></p>\n</form>\n<section class="counter" id="counter" aria-label="'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'follow'))
        yield '" hidden>\n<div class="mini" id="mini" hidden></div>\n<div class="where"><p id="where"></p><progress id="progress" max="1" value="0" aria-label="'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'follow'))
        yield '"></progress></div>\n<div class="also"><button type="button" id="show-chart" aria-pressed="false">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'chart'))
        yield '</button><button type="button" id="again">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'again'))
        yield '</button><button type="button" id="close">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'close'))
        yield '</button></div>\n<div class="go"><button type="button" id="back">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'back'))
        yield '</button><button type="button" id="done">'
        yield escape(environment.getattr(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'words'), 'done'))
        yield '</button></div>\n<p class="unseen" id="aloud" role="status"></p>\n</section>\n<script type="application/json" id="pattern-data">'
        yield escape(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'data'))
        yield '</script>\n<script>'
        yield escape(environment.getattr((undefined(name='web') if l_0_web is missing else l_0_web), 'script'))
        yield '</script>\n'
    yield '</body>\n</html>\n'

blocks = {}
debug_info = '2=28&7=34&9=41&10=44&12=46&13=49&15=52&17=54&18=56&20=59&21=61&26=64&27=66&28=69&29=71&30=74&31=76&32=79&33=83&36=89&38=92&39=94&40=97&41=101&46=108&47=110&48=114&51=122&53=126&55=128&57=130&58=132&59=138&62=142&63=144'

MARK = '3.1.6 3124 f97ab697'
