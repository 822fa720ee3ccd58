"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors

from jinja2.runtime import LoopContext, Macro, Markup, Namespace, TemplateNotFound, TemplateReference, TemplateRuntimeError, Undefined, escape, identity, internalcode, markup_join, missing, str_join
name = 'large.html'

def root(context, missing=missing):
    resolve = context.resolve_or_missing
    undefined = environment.undefined
    concat = environment.concat
    cond_expr_undefined = Undefined
    if 0: yield None
    l_0_doc = resolve('doc')
    l_0_css = resolve('css')
    l_0_blocks = resolve('blocks')
    pass
    yield '<!DOCTYPE html>\n<html lang="'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'language'))
    yield '">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="only light">\n<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'">\n<meta name="referrer" content="no-referrer">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield '<meta name="author" content="'
        yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'))
        yield '">\n'
    yield '<title>'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'))
    yield '</title>\n<style>\n'
    yield escape((undefined(name='css') if l_0_css is missing else l_0_css))
    yield '</style>\n</head>\n<body>\n<main>\n'
    for l_1_block in (undefined(name='blocks') if l_0_blocks is missing else l_0_blocks):
        _loop_vars = {}
        pass
        if (environment.getattr(l_1_block, 'kind') == 'heading'):
            pass
            yield '<h'
            yield escape(environment.getattr(l_1_block, 'level'))
            if environment.getattr(l_1_block, 'anchor'):
                pass
                yield ' id="'
                yield escape(environment.getattr(l_1_block, 'anchor'))
                yield '" class="size"'
            yield '>'
            yield escape(environment.getattr(l_1_block, 'text'))
            yield '</h'
            yield escape(environment.getattr(l_1_block, 'level'))
            yield '>\n'
        elif (environment.getattr(l_1_block, 'kind') == 'link'):
            pass
            yield '<p><a href="#'
            yield escape(environment.getattr(l_1_block, 'anchor'))
            yield '">'
            yield escape(environment.getattr(l_1_block, 'text'))
            yield '</a></p>\n'
        elif (environment.getattr(l_1_block, 'kind') == 'row'):
            pass
            yield '<p><b>'
            yield escape(environment.getattr(l_1_block, 'label'))
            yield '</b> '
            yield escape(environment.getattr(l_1_block, 'text'))
            yield '</p>\n'
        else:
            pass
            yield '<p>'
            yield escape(environment.getattr(l_1_block, 'text'))
            yield '</p>\n'
    l_1_block = missing
    yield '</main>\n</body>\n</html>\n'

blocks = {}
debug_info = '2=15&9=17&10=20&12=23&14=25&18=27&19=30&20=33&21=44&22=47&23=51&24=54&26=61'

MARK = '3.1.6 944 cc400b11'
