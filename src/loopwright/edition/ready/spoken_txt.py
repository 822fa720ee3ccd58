"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors

from jinja2.runtime import LoopContext, Macro, Markup, Namespace, TemplateNotFound, TemplateReference, TemplateRuntimeError, Undefined, escape, identity, internalcode, markup_join, missing, str_join
name = 'spoken.txt'

def root(context, missing=missing):
    resolve = context.resolve_or_missing
    undefined = environment.undefined
    concat = environment.concat
    cond_expr_undefined = Undefined
    if 0: yield None
    l_0_doc = resolve('doc')
    l_0_heading = resolve('heading')
    l_0_part = missing
    try:
        t_1 = environment.filters['join']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'join' found.")
    try:
        t_2 = environment.filters['lower']
    except KeyError:
        @internalcode
        def t_2(*unused):
            raise TemplateRuntimeError("No filter named 'lower' found.")
    pass
    def macro(l_1_name, l_1_items):
        t_3 = []
        if l_1_name is missing:
            l_1_name = undefined("parameter 'name' was not provided", name='name')
        if l_1_items is missing:
            l_1_items = undefined("parameter 'items' was not provided", name='items')
        pass
        if l_1_items:
            pass
            t_3.extend((
                '\n',
                str(l_1_name),
                '.\n',
            ))
            for l_2_item in l_1_items:
                l_2_in_full = resolve('in_full')
                _loop_vars = {}
                pass
                t_3.append(
                    str(context.call((undefined(name='in_full') if l_2_in_full is missing else l_2_in_full), l_2_item, _loop_vars=_loop_vars)),
                )
                if (l_2_item[-1:] not in '.!?'):
                    pass
                    t_3.append(
                        '.',
                    )
                t_3.append(
                    '\n',
                )
            l_2_item = l_2_in_full = missing
        return concat(t_3)
    context.exported_vars.add('part')
    context.vars['part'] = l_0_part = Macro(environment, macro, 'part', ('name', 'items'), False, False, False, context.eval_ctx.autoescape)
    yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'))
    yield '.\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield 'By '
        yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'))
        yield '.\n'
    yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'))
    yield '\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'):
        pass
        yield 'Size '
        yield str(t_1(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '))
        yield '.\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'):
        pass
        yield 'Level: '
        yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'))
        yield '.\n'
    for l_1_notice in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notices'):
        _loop_vars = {}
        pass
        yield str(l_1_notice)
        yield '\n'
    l_1_notice = missing
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'):
        pass
        yield '\n'
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'finished'))
        yield '.\n'
        l_1_loop = missing
        for l_1_row, l_1_loop in LoopContext(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'rows'), undefined):
            _loop_vars = {}
            pass
            l_2_loop = missing
            for l_2_cell, l_2_loop in LoopContext(l_1_row[1:], undefined):
                l_2_in_full = resolve('in_full')
                _loop_vars = {}
                pass
                yield str(environment.getitem(l_1_row, 0))
                yield ', '
                yield str(t_2(environment.getitem(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head'), environment.getattr(l_2_loop, 'index'))))
                yield ': '
                yield str(context.call((undefined(name='in_full') if l_2_in_full is missing else l_2_in_full), l_2_cell, _loop_vars=_loop_vars))
                yield '.\n'
            l_2_loop = l_2_cell = l_2_in_full = missing
        l_1_loop = l_1_row = missing
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'gauge'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'gauge')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'needles'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'needles')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'yarn'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'yarns')))
    for l_1_shade in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades'):
        l_1_in_full = resolve('in_full')
        _loop_vars = {}
        pass
        yield str(environment.getattr(l_1_shade, 'name'))
        if environment.getattr(l_1_shade, 'strand'):
            pass
            yield ', in strand '
            yield str(environment.getattr(l_1_shade, 'strand'))
        if environment.getattr(l_1_shade, 'amount'):
            pass
            yield ': '
            yield str(context.call((undefined(name='in_full') if l_1_in_full is missing else l_1_in_full), environment.getattr(l_1_shade, 'amount'), _loop_vars=_loop_vars))
        if environment.getattr(l_1_shade, 'needed'):
            pass
            yield '; about '
            yield str(context.call((undefined(name='in_full') if l_1_in_full is missing else l_1_in_full), environment.getattr(l_1_shade, 'needed'), _loop_vars=_loop_vars))
            yield ' is knit'
        if environment.getattr(l_1_shade, 'weighs'):
            pass
            yield ', which weighs '
            yield str(context.call((undefined(name='in_full') if l_1_in_full is missing else l_1_in_full), environment.getattr(l_1_shade, 'weighs'), _loop_vars=_loop_vars))
        yield '.\n'
    l_1_shade = l_1_in_full = missing
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'substitution'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'substitution')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'notions'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notions')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'cautions'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cautions')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'notes'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notes')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'care'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'care')))
    yield str(context.call((undefined(name='part') if l_0_part is missing else l_0_part), environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'skills'), environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'skills')))
    l_1_loop = missing
    for l_1_section, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), undefined):
        l_1_steps = resolve('steps')
        _loop_vars = {}
        pass
        yield '\n'
        if environment.getattr(l_1_section, 'heading'):
            pass
            yield str(environment.getattr(l_1_section, 'heading'))
            yield '.\n'
        for (l_2_kind, l_2_lines) in environment.getitem((undefined(name='steps') if l_1_steps is missing else l_1_steps), environment.getattr(l_1_loop, 'index0')):
            _loop_vars = {}
            pass
            yield '\n'
            for l_3_line in l_2_lines:
                _loop_vars = {}
                pass
                yield str(l_3_line)
                yield '\n'
            l_3_line = missing
        l_2_kind = l_2_lines = missing
    l_1_loop = l_1_section = l_1_steps = missing

blocks = {}
debug_info = '1=26&2=33&4=37&5=40&6=45&11=59&12=61&13=64&15=66&16=68&17=71&19=73&20=76&22=78&23=81&25=84&27=87&28=90&29=94&30=98&34=106&35=107&36=108&37=109&38=113&40=133&41=134&42=135&43=136&44=137&45=138&46=140&48=145&49=147&51=149&53=153&54=156'

MARK = '3.1.6 1595 e5003578'
