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
    try:
        t_1 = environment.filters['dir_of']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'dir_of' found.")
    try:
        t_2 = environment.filters['joined']
    except KeyError:
        @internalcode
        def t_2(*unused):
            raise TemplateRuntimeError("No filter named 'joined' found.")
    pass
    yield '<!DOCTYPE html>\n<html lang="'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'language'))
    yield '">\n<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="only light">\n<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'">\n<meta name="referrer" content="no-referrer">\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield '<meta name="author" content="'
        yield escape(t_2(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer')))
        yield '">\n'
    yield '<title>'
    yield escape(t_2(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title')))
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
            yield escape(t_1(environment.getattr(l_1_block, 'text')))
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
            yield '<p'
            yield escape(t_1(environment.getattr(l_1_block, 'text')))
            yield '>'
            yield escape(environment.getattr(l_1_block, 'text'))
            yield '</p>\n'
    l_1_block = missing
    yield '</main>\n</body>\n</html>\n'

blocks = {}
debug_info = '2=27&9=29&10=32&12=35&14=37&18=39&19=42&20=45&21=57&22=60&23=64&24=67&26=74'

MARK = '3.1.6 1004 23e7a7e8'
