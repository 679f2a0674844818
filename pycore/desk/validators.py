"""Generated from shared/schema by `python3 -m web contract`. Do not edit.

One function for each message; it returns the message or raises SchemaRefusal.
"""

# ruff: noqa
# mypy: ignore-errors

from pycore.desk.refusal import SchemaRefusal as JsonSchemaValueException

JsonSchemaValuesException = JsonSchemaValueException
VERSION = '2.22.3'
from decimal import Decimal
NoneType = type(None)

def validate___definitions_read_quantity_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['quantity', 'value', 'read_as', 'doubts']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['quantity', 'value', 'read_as', 'doubts']}, rule='required')
        data_keys = set(data.keys())
        if 'quantity' in data_keys:
            data_keys.remove('quantity')
            data__quantity = data['quantity']
            if not isinstance(data__quantity, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.quantity must be string', value=data__quantity, name='' + (name_prefix or 'data') + '.quantity', definition={'type': 'string'}, rule='type')
        if 'value' in data_keys:
            data_keys.remove('value')
            data__value = data['value']
            if not isinstance(data__value, (int, float, Decimal)) or isinstance(data__value, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.value must be number', value=data__value, name='' + (name_prefix or 'data') + '.value', definition={'type': 'number'}, rule='type')
        if 'read_as' in data_keys:
            data_keys.remove('read_as')
            data__readas = data['read_as']
            validate___definitions_shown(data__readas, custom_formats, (name_prefix or 'data') + '.read_as')
        if 'doubts' in data_keys:
            data_keys.remove('doubts')
            data__doubts = data['doubts']
            if not isinstance(data__doubts, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.doubts must be array', value=data__doubts, name='' + (name_prefix or 'data') + '.doubts', definition={'type': 'array'}, rule='type')
            data__doubts_is_list = isinstance(data__doubts, (list, tuple))
            if data__doubts_is_list:
                data__doubts_len = len(data__doubts)
                for data__doubts_x, data__doubts_item in enumerate(data__doubts):
                    validate___definitions_doubt(data__doubts_item, custom_formats, (name_prefix or 'data') + '.doubts[{data__doubts_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_doubt(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['path', 'code', 'got', 'usual_low', 'usual_high']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['path', 'code', 'got', 'usual_low', 'usual_high']}, rule='required')
        data_keys = set(data.keys())
        if 'path' in data_keys:
            data_keys.remove('path')
            data__path = data['path']
            if not isinstance(data__path, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.path must be string', value=data__path, name='' + (name_prefix or 'data') + '.path', definition={'type': 'string'}, rule='type')
        if 'code' in data_keys:
            data_keys.remove('code')
            data__code = data['code']
            if not isinstance(data__code, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.code must be string', value=data__code, name='' + (name_prefix or 'data') + '.code', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__code, str) and data__code == 'unusual'):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".code must be one of ['unusual']", value=data__code, name='' + (name_prefix or 'data') + '.code', definition={'enum': ['unusual']}, rule='enum')
        if 'got' in data_keys:
            data_keys.remove('got')
            data__got = data['got']
            validate___definitions_shown(data__got, custom_formats, (name_prefix or 'data') + '.got')
        if 'usual_low' in data_keys:
            data_keys.remove('usual_low')
            data__usuallow = data['usual_low']
            if not isinstance(data__usuallow, (int, float, Decimal)) or isinstance(data__usuallow, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.usual_low must be number', value=data__usuallow, name='' + (name_prefix or 'data') + '.usual_low', definition={'type': 'number'}, rule='type')
        if 'usual_high' in data_keys:
            data_keys.remove('usual_high')
            data__usualhigh = data['usual_high']
            if not isinstance(data__usualhigh, (int, float, Decimal)) or isinstance(data__usualhigh, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.usual_high must be number', value=data__usualhigh, name='' + (name_prefix or 'data') + '.usual_high', definition={'type': 'number'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_shown(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['value', 'decimals', 'unit']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['value', 'decimals', 'unit']}, rule='required')
        data_keys = set(data.keys())
        if 'value' in data_keys:
            data_keys.remove('value')
            data__value = data['value']
            if not isinstance(data__value, (int, float, Decimal)) or isinstance(data__value, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.value must be number', value=data__value, name='' + (name_prefix or 'data') + '.value', definition={'type': 'number'}, rule='type')
        if 'decimals' in data_keys:
            data_keys.remove('decimals')
            data__decimals = data['decimals']
            if not isinstance(data__decimals, int) and (not (isinstance(data__decimals, float) and data__decimals.is_integer())) or isinstance(data__decimals, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.decimals must be integer', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'type': 'integer'}, rule='type')
            if isinstance(data__decimals, (int, float, Decimal)) and (not isinstance(data__decimals, bool)):
                if data__decimals < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.decimals must be bigger than or equal to 0', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'minimum': 0}, rule='minimum')
                if data__decimals > 9:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.decimals must be smaller than or equal to 9', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'maximum': 9}, rule='maximum')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if 'fraction' in data_keys:
            data_keys.remove('fraction')
            data__fraction = data['fraction']
            validate___definitions_fraction(data__fraction, custom_formats, (name_prefix or 'data') + '.fraction')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fraction(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['whole', 'numerator', 'denominator']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['whole', 'numerator', 'denominator']}, rule='required')
        data_keys = set(data.keys())
        if 'whole' in data_keys:
            data_keys.remove('whole')
            data__whole = data['whole']
            if not isinstance(data__whole, int) and (not (isinstance(data__whole, float) and data__whole.is_integer())) or isinstance(data__whole, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.whole must be integer', value=data__whole, name='' + (name_prefix or 'data') + '.whole', definition={'type': 'integer'}, rule='type')
        if 'numerator' in data_keys:
            data_keys.remove('numerator')
            data__numerator = data['numerator']
            if not isinstance(data__numerator, int) and (not (isinstance(data__numerator, float) and data__numerator.is_integer())) or isinstance(data__numerator, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.numerator must be integer', value=data__numerator, name='' + (name_prefix or 'data') + '.numerator', definition={'type': 'integer'}, rule='type')
            if isinstance(data__numerator, (int, float, Decimal)) and (not isinstance(data__numerator, bool)):
                if data__numerator < 1:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.numerator must be bigger than or equal to 1', value=data__numerator, name='' + (name_prefix or 'data') + '.numerator', definition={'minimum': 1}, rule='minimum')
        if 'denominator' in data_keys:
            data_keys.remove('denominator')
            data__denominator = data['denominator']
            if not isinstance(data__denominator, int) and (not (isinstance(data__denominator, float) and data__denominator.is_integer())) or isinstance(data__denominator, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.denominator must be integer', value=data__denominator, name='' + (name_prefix or 'data') + '.denominator', definition={'type': 'integer'}, rule='type')
            if isinstance(data__denominator, (int, float, Decimal)) and (not isinstance(data__denominator, bool)):
                if data__denominator < 2:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.denominator must be bigger than or equal to 2', value=data__denominator, name='' + (name_prefix or 'data') + '.denominator', definition={'minimum': 2}, rule='minimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be string', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'mm' or (isinstance(data, str) and data == 'cm') or (isinstance(data, str) and data == 'm') or (isinstance(data, str) and data == 'in') or (isinstance(data, str) and data == 'ft') or (isinstance(data, str) and data == 'L') or (isinstance(data, str) and data == 'mL') or (isinstance(data, str) and data == 'US gal') or (isinstance(data, str) and data == 'US qt') or (isinstance(data, str) and data == 'US pt') or (isinstance(data, str) and data == 'US fl oz') or (isinstance(data, str) and data == 'imp gal') or (isinstance(data, str) and data == 'imp qt') or (isinstance(data, str) and data == 'imp pt') or (isinstance(data, str) and data == 'imp fl oz') or (isinstance(data, str) and data == '°C') or (isinstance(data, str) and data == '°F') or (isinstance(data, str) and data == 'kg') or (isinstance(data, str) and data == 'lb') or (isinstance(data, str) and data == '%') or (isinstance(data, str) and data == 'Brix') or (isinstance(data, str) and data == '1')):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + " must be one of ['mm', 'cm', 'm', 'in', 'ft', 'L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz', '°C', '°F', 'kg', 'lb', '%', 'Brix', '1']", value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['mm', 'cm', 'm', 'in', 'ft', 'L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz', '°C', '°F', 'kg', 'lb', '%', 'Brix', '1']}, rule='enum')
    return data

def validate___definitions_read_quantity_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text', 'quantity']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text', 'quantity']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.text must be string', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
            if isinstance(data__text, str):
                data__text_len = len(data__text)
                if data__text_len > 40:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.text must be shorter than or equal to 40 characters', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'maxLength': 40}, rule='maxLength')
        if 'quantity' in data_keys:
            data_keys.remove('quantity')
            data__quantity = data['quantity']
            if not isinstance(data__quantity, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.quantity must be string', value=data__quantity, name='' + (name_prefix or 'data') + '.quantity', definition={'type': 'string'}, rule='type')
            if isinstance(data__quantity, str):
                data__quantity_len = len(data__quantity)
                if data__quantity_len > 40:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.quantity must be shorter than or equal to 40 characters', value=data__quantity, name='' + (name_prefix or 'data') + '.quantity', definition={'maxLength': 40}, rule='maxLength')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_machine_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['full_depth_mm', 'rim_depth_mm', 'full_volume_l', 'rim_volume_l', 'litres_per_mm', 'low_pct', 'aim_pct', 'high_pct', 'strong_pct', 'weak_pct', 'closeness_pct', 'usable_l', 'water_mark_l', 'jug_mark_l', 'shown', 'doubts']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['full_depth_mm', 'rim_depth_mm', 'full_volume_l', 'rim_volume_l', 'litres_per_mm', 'low_pct', 'aim_pct', 'high_pct', 'strong_pct', 'weak_pct', 'closeness_pct', 'usable_l', 'water_mark_l', 'jug_mark_l', 'shown', 'doubts']}, rule='required')
        data_keys = set(data.keys())
        if 'full_depth_mm' in data_keys:
            data_keys.remove('full_depth_mm')
            data__fulldepthmm = data['full_depth_mm']
            if not isinstance(data__fulldepthmm, (int, float, Decimal)) or isinstance(data__fulldepthmm, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.full_depth_mm must be number', value=data__fulldepthmm, name='' + (name_prefix or 'data') + '.full_depth_mm', definition={'type': 'number'}, rule='type')
        if 'rim_depth_mm' in data_keys:
            data_keys.remove('rim_depth_mm')
            data__rimdepthmm = data['rim_depth_mm']
            if not isinstance(data__rimdepthmm, (int, float, Decimal)) or isinstance(data__rimdepthmm, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.rim_depth_mm must be number', value=data__rimdepthmm, name='' + (name_prefix or 'data') + '.rim_depth_mm', definition={'type': 'number'}, rule='type')
        if 'full_volume_l' in data_keys:
            data_keys.remove('full_volume_l')
            data__fullvolumel = data['full_volume_l']
            if not isinstance(data__fullvolumel, (int, float, Decimal)) or isinstance(data__fullvolumel, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.full_volume_l must be number', value=data__fullvolumel, name='' + (name_prefix or 'data') + '.full_volume_l', definition={'type': 'number'}, rule='type')
        if 'rim_volume_l' in data_keys:
            data_keys.remove('rim_volume_l')
            data__rimvolumel = data['rim_volume_l']
            if not isinstance(data__rimvolumel, (int, float, Decimal)) or isinstance(data__rimvolumel, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.rim_volume_l must be number', value=data__rimvolumel, name='' + (name_prefix or 'data') + '.rim_volume_l', definition={'type': 'number'}, rule='type')
        if 'litres_per_mm' in data_keys:
            data_keys.remove('litres_per_mm')
            data__litrespermm = data['litres_per_mm']
            if not isinstance(data__litrespermm, (int, float, Decimal)) or isinstance(data__litrespermm, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.litres_per_mm must be number', value=data__litrespermm, name='' + (name_prefix or 'data') + '.litres_per_mm', definition={'type': 'number'}, rule='type')
        if 'low_pct' in data_keys:
            data_keys.remove('low_pct')
            data__lowpct = data['low_pct']
            if not isinstance(data__lowpct, (int, float, Decimal)) or isinstance(data__lowpct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.low_pct must be number', value=data__lowpct, name='' + (name_prefix or 'data') + '.low_pct', definition={'type': 'number'}, rule='type')
        if 'aim_pct' in data_keys:
            data_keys.remove('aim_pct')
            data__aimpct = data['aim_pct']
            if not isinstance(data__aimpct, (int, float, Decimal)) or isinstance(data__aimpct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.aim_pct must be number', value=data__aimpct, name='' + (name_prefix or 'data') + '.aim_pct', definition={'type': 'number'}, rule='type')
        if 'high_pct' in data_keys:
            data_keys.remove('high_pct')
            data__highpct = data['high_pct']
            if not isinstance(data__highpct, (int, float, Decimal)) or isinstance(data__highpct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.high_pct must be number', value=data__highpct, name='' + (name_prefix or 'data') + '.high_pct', definition={'type': 'number'}, rule='type')
        if 'strong_pct' in data_keys:
            data_keys.remove('strong_pct')
            data__strongpct = data['strong_pct']
            if not isinstance(data__strongpct, (int, float, Decimal)) or isinstance(data__strongpct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.strong_pct must be number', value=data__strongpct, name='' + (name_prefix or 'data') + '.strong_pct', definition={'type': 'number'}, rule='type')
        if 'weak_pct' in data_keys:
            data_keys.remove('weak_pct')
            data__weakpct = data['weak_pct']
            if not isinstance(data__weakpct, (int, float, Decimal)) or isinstance(data__weakpct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.weak_pct must be number', value=data__weakpct, name='' + (name_prefix or 'data') + '.weak_pct', definition={'type': 'number'}, rule='type')
        if 'closeness_pct' in data_keys:
            data_keys.remove('closeness_pct')
            data__closenesspct = data['closeness_pct']
            if not isinstance(data__closenesspct, (int, float, Decimal)) or isinstance(data__closenesspct, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.closeness_pct must be number', value=data__closenesspct, name='' + (name_prefix or 'data') + '.closeness_pct', definition={'type': 'number'}, rule='type')
        if 'usable_l' in data_keys:
            data_keys.remove('usable_l')
            data__usablel = data['usable_l']
            if not isinstance(data__usablel, (int, float, Decimal)) or isinstance(data__usablel, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.usable_l must be number', value=data__usablel, name='' + (name_prefix or 'data') + '.usable_l', definition={'type': 'number'}, rule='type')
        if 'water_mark_l' in data_keys:
            data_keys.remove('water_mark_l')
            data__watermarkl = data['water_mark_l']
            if not isinstance(data__watermarkl, (int, float, Decimal)) or isinstance(data__watermarkl, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.water_mark_l must be number', value=data__watermarkl, name='' + (name_prefix or 'data') + '.water_mark_l', definition={'type': 'number'}, rule='type')
        if 'jug_mark_l' in data_keys:
            data_keys.remove('jug_mark_l')
            data__jugmarkl = data['jug_mark_l']
            if not isinstance(data__jugmarkl, (int, float, Decimal)) or isinstance(data__jugmarkl, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.jug_mark_l must be number', value=data__jugmarkl, name='' + (name_prefix or 'data') + '.jug_mark_l', definition={'type': 'number'}, rule='type')
        if 'shown' in data_keys:
            data_keys.remove('shown')
            data__shown = data['shown']
            if not isinstance(data__shown, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must be object', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'type': 'object'}, rule='type')
            data__shown_is_dict = isinstance(data__shown, dict)
            if data__shown_is_dict:
                data__shown__missing_keys = set(['full_depth', 'full_volume', 'low', 'aim', 'high', 'usable', 'water_mark', 'jug_mark', 'strong', 'weak']) - data__shown.keys()
                if data__shown__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must contain ' + (str(sorted(data__shown__missing_keys)) + ' properties'), value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'required': ['full_depth', 'full_volume', 'low', 'aim', 'high', 'usable', 'water_mark', 'jug_mark', 'strong', 'weak']}, rule='required')
                data__shown_keys = set(data__shown.keys())
                if 'full_depth' in data__shown_keys:
                    data__shown_keys.remove('full_depth')
                    data__shown__fulldepth = data__shown['full_depth']
                    validate___definitions_shown(data__shown__fulldepth, custom_formats, (name_prefix or 'data') + '.shown.full_depth')
                if 'full_volume' in data__shown_keys:
                    data__shown_keys.remove('full_volume')
                    data__shown__fullvolume = data__shown['full_volume']
                    validate___definitions_shown(data__shown__fullvolume, custom_formats, (name_prefix or 'data') + '.shown.full_volume')
                if 'low' in data__shown_keys:
                    data__shown_keys.remove('low')
                    data__shown__low = data__shown['low']
                    validate___definitions_shown(data__shown__low, custom_formats, (name_prefix or 'data') + '.shown.low')
                if 'aim' in data__shown_keys:
                    data__shown_keys.remove('aim')
                    data__shown__aim = data__shown['aim']
                    validate___definitions_shown(data__shown__aim, custom_formats, (name_prefix or 'data') + '.shown.aim')
                if 'high' in data__shown_keys:
                    data__shown_keys.remove('high')
                    data__shown__high = data__shown['high']
                    validate___definitions_shown(data__shown__high, custom_formats, (name_prefix or 'data') + '.shown.high')
                if 'usable' in data__shown_keys:
                    data__shown_keys.remove('usable')
                    data__shown__usable = data__shown['usable']
                    validate___definitions_shown(data__shown__usable, custom_formats, (name_prefix or 'data') + '.shown.usable')
                if 'water_mark' in data__shown_keys:
                    data__shown_keys.remove('water_mark')
                    data__shown__watermark = data__shown['water_mark']
                    validate___definitions_shown(data__shown__watermark, custom_formats, (name_prefix or 'data') + '.shown.water_mark')
                if 'jug_mark' in data__shown_keys:
                    data__shown_keys.remove('jug_mark')
                    data__shown__jugmark = data__shown['jug_mark']
                    validate___definitions_shown(data__shown__jugmark, custom_formats, (name_prefix or 'data') + '.shown.jug_mark')
                if 'strong' in data__shown_keys:
                    data__shown_keys.remove('strong')
                    data__shown__strong = data__shown['strong']
                    validate___definitions_shown(data__shown__strong, custom_formats, (name_prefix or 'data') + '.shown.strong')
                if 'weak' in data__shown_keys:
                    data__shown_keys.remove('weak')
                    data__shown__weak = data__shown['weak']
                    validate___definitions_shown(data__shown__weak, custom_formats, (name_prefix or 'data') + '.shown.weak')
                if 'factor' in data__shown_keys:
                    data__shown_keys.remove('factor')
                    data__shown__factor = data__shown['factor']
                    validate___definitions_shown(data__shown__factor, custom_formats, (name_prefix or 'data') + '.shown.factor')
                if data__shown_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must not contain ' + str(data__shown_keys) + ' properties', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'doubts' in data_keys:
            data_keys.remove('doubts')
            data__doubts = data['doubts']
            if not isinstance(data__doubts, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.doubts must be array', value=data__doubts, name='' + (name_prefix or 'data') + '.doubts', definition={'type': 'array'}, rule='type')
            data__doubts_is_list = isinstance(data__doubts, (list, tuple))
            if data__doubts_is_list:
                data__doubts_len = len(data__doubts)
                for data__doubts_x, data__doubts_item in enumerate(data__doubts):
                    validate___definitions_doubt(data__doubts_item, custom_formats, (name_prefix or 'data') + '.doubts[{data__doubts_x}]'.format(**locals()))
        if 'factor' in data_keys:
            data_keys.remove('factor')
            data__factor = data['factor']
            if not isinstance(data__factor, (int, float, Decimal)) or isinstance(data__factor, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.factor must be number', value=data__factor, name='' + (name_prefix or 'data') + '.factor', definition={'type': 'number'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_machine_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_machine_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['name', 'sump', 'fluid', 'target', 'mixing', 'bucket', 'units']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['name', 'sump', 'fluid', 'target', 'mixing', 'bucket', 'units']}, rule='required')
        data_keys = set(data.keys())
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.name must be string', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len < 1:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.name must be longer than or equal to 1 characters', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'minLength': 1}, rule='minLength')
                if data__name_len > 80:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.name must be shorter than or equal to 80 characters', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            validate___definitions_sump_typed(data__sump, custom_formats, (name_prefix or 'data') + '.sump')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_fluid_typed(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            validate___definitions_mixing_typed(data__mixing, custom_formats, (name_prefix or 'data') + '.mixing')
        if 'bucket' in data_keys:
            data_keys.remove('bucket')
            data__bucket = data['bucket']
            validate___definitions_bucket_typed(data__bucket, custom_formats, (name_prefix or 'data') + '.bucket')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            validate___definitions_units(data__units, custom_formats, (name_prefix or 'data') + '.units')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_units(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['plate', 'stick', 'pail', 'jug']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['plate', 'stick', 'pail', 'jug']}, rule='required')
        data_keys = set(data.keys())
        if 'plate' in data_keys:
            data_keys.remove('plate')
            data__plate = data['plate']
            validate___definitions_volume_unit(data__plate, custom_formats, (name_prefix or 'data') + '.plate')
        if 'stick' in data_keys:
            data_keys.remove('stick')
            data__stick = data['stick']
            validate___definitions_length_unit(data__stick, custom_formats, (name_prefix or 'data') + '.stick')
        if 'pail' in data_keys:
            data_keys.remove('pail')
            data__pail = data['pail']
            validate___definitions_volume_unit(data__pail, custom_formats, (name_prefix or 'data') + '.pail')
        if 'jug' in data_keys:
            data_keys.remove('jug')
            data__jug = data['jug']
            validate___definitions_volume_unit(data__jug, custom_formats, (name_prefix or 'data') + '.jug')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_length_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be string', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'mm' or (isinstance(data, str) and data == 'cm') or (isinstance(data, str) and data == 'm') or (isinstance(data, str) and data == 'in') or (isinstance(data, str) and data == 'ft')):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + " must be one of ['mm', 'cm', 'm', 'in', 'ft']", value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['mm', 'cm', 'm', 'in', 'ft']}, rule='enum')
    return data

def validate___definitions_volume_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be string', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'L' or (isinstance(data, str) and data == 'mL') or (isinstance(data, str) and data == 'US gal') or (isinstance(data, str) and data == 'US qt') or (isinstance(data, str) and data == 'US pt') or (isinstance(data, str) and data == 'US fl oz') or (isinstance(data, str) and data == 'imp gal') or (isinstance(data, str) and data == 'imp qt') or (isinstance(data, str) and data == 'imp pt') or (isinstance(data, str) and data == 'imp fl oz')):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + " must be one of ['L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz']", value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz']}, rule='enum')
    return data

def validate___definitions_bucket_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['usable', 'water_mark', 'jug_mark']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['usable', 'water_mark', 'jug_mark']}, rule='required')
        data_keys = set(data.keys())
        if 'usable' in data_keys:
            data_keys.remove('usable')
            data__usable = data['usable']
            validate___definitions_typed(data__usable, custom_formats, (name_prefix or 'data') + '.usable')
        if 'water_mark' in data_keys:
            data_keys.remove('water_mark')
            data__watermark = data['water_mark']
            validate___definitions_typed(data__watermark, custom_formats, (name_prefix or 'data') + '.water_mark')
        if 'jug_mark' in data_keys:
            data_keys.remove('jug_mark')
            data__jugmark = data['jug_mark']
            validate___definitions_typed(data__jugmark, custom_formats, (name_prefix or 'data') + '.jug_mark')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.text must be string', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
            if isinstance(data__text, str):
                data__text_len = len(data__text)
                if data__text_len > 40:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.text must be shorter than or equal to 40 characters', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'maxLength': 40}, rule='maxLength')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_mixing_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['strong', 'weak', 'closeness']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['strong', 'weak', 'closeness']}, rule='required')
        data_keys = set(data.keys())
        if 'strong' in data_keys:
            data_keys.remove('strong')
            data__strong = data['strong']
            validate___definitions_typed(data__strong, custom_formats, (name_prefix or 'data') + '.strong')
        if 'weak' in data_keys:
            data_keys.remove('weak')
            data__weak = data['weak']
            validate___definitions_typed(data__weak, custom_formats, (name_prefix or 'data') + '.weak')
        if 'closeness' in data_keys:
            data_keys.remove('closeness')
            data__closeness = data['closeness']
            validate___definitions_typed(data__closeness, custom_formats, (name_prefix or 'data') + '.closeness')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_target_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['low', 'aim', 'high']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['low', 'aim', 'high']}, rule='required')
        data_keys = set(data.keys())
        if 'low' in data_keys:
            data_keys.remove('low')
            data__low = data['low']
            validate___definitions_typed(data__low, custom_formats, (name_prefix or 'data') + '.low')
        if 'aim' in data_keys:
            data_keys.remove('aim')
            data__aim = data['aim']
            validate___definitions_typed(data__aim, custom_formats, (name_prefix or 'data') + '.aim')
        if 'high' in data_keys:
            data_keys.remove('high')
            data__high = data['high']
            validate___definitions_typed(data__high, custom_formats, (name_prefix or 'data') + '.high')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fluid_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['type']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['type']}, rule='required')
        data_keys = set(data.keys())
        if 'type' in data_keys:
            data_keys.remove('type')
            data__type = data['type']
            if not isinstance(data__type, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.type must be string', value=data__type, name='' + (name_prefix or 'data') + '.type', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__type, str) and data__type == 'soluble_oil' or (isinstance(data__type, str) and data__type == 'semi_synthetic') or (isinstance(data__type, str) and data__type == 'synthetic') or (isinstance(data__type, str) and data__type == 'neat_oil')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".type must be one of ['soluble_oil', 'semi_synthetic', 'synthetic', 'neat_oil']", value=data__type, name='' + (name_prefix or 'data') + '.type', definition={'enum': ['soluble_oil', 'semi_synthetic', 'synthetic', 'neat_oil']}, rule='enum')
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.name must be string', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len > 80:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.name must be shorter than or equal to 80 characters', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'factor' in data_keys:
            data_keys.remove('factor')
            data__factor = data['factor']
            validate___definitions_typed(data__factor, custom_formats, (name_prefix or 'data') + '.factor')
        if 'factor_known_by' in data_keys:
            data_keys.remove('factor_known_by')
            data__factorknownby = data['factor_known_by']
            if not isinstance(data__factorknownby, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.factor_known_by must be string', value=data__factorknownby, name='' + (name_prefix or 'data') + '.factor_known_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__factorknownby, str) and data__factorknownby == 'sheet' or (isinstance(data__factorknownby, str) and data__factorknownby == 'own_jugs') or (isinstance(data__factorknownby, str) and data__factorknownby == 'old_fluid')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".factor_known_by must be one of ['sheet', 'own_jugs', 'old_fluid']", value=data__factorknownby, name='' + (name_prefix or 'data') + '.factor_known_by', definition={'enum': ['sheet', 'own_jugs', 'old_fluid']}, rule='enum')
        if 'zero' in data_keys:
            data_keys.remove('zero')
            data__zero = data['zero']
            validate___definitions_typed(data__zero, custom_formats, (name_prefix or 'data') + '.zero')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_sump_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'proportional'):
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.kind must be same as const definition: proportional', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'proportional'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['full_volume']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['full_volume']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'box'):
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.kind must be same as const definition: box', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'box'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['length', 'width']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['length', 'width']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'table'):
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.kind must be same as const definition: table', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'table'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['points']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['points']}, rule='required')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind', 'full_depth', 'volume_known_by']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind', 'full_depth', 'volume_known_by']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.kind must be string', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'proportional' or (isinstance(data__kind, str) and data__kind == 'box') or (isinstance(data__kind, str) and data__kind == 'table')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".kind must be one of ['proportional', 'box', 'table']", value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['proportional', 'box', 'table']}, rule='enum')
        if 'full_depth' in data_keys:
            data_keys.remove('full_depth')
            data__fulldepth = data['full_depth']
            validate___definitions_typed(data__fulldepth, custom_formats, (name_prefix or 'data') + '.full_depth')
        if 'volume_known_by' in data_keys:
            data_keys.remove('volume_known_by')
            data__volumeknownby = data['volume_known_by']
            if not isinstance(data__volumeknownby, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.volume_known_by must be string', value=data__volumeknownby, name='' + (name_prefix or 'data') + '.volume_known_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__volumeknownby, str) and data__volumeknownby == 'plate' or (isinstance(data__volumeknownby, str) and data__volumeknownby == 'poured') or (isinstance(data__volumeknownby, str) and data__volumeknownby == 'said')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".volume_known_by must be one of ['plate', 'poured', 'said']", value=data__volumeknownby, name='' + (name_prefix or 'data') + '.volume_known_by', definition={'enum': ['plate', 'poured', 'said']}, rule='enum')
        if 'full_volume' in data_keys:
            data_keys.remove('full_volume')
            data__fullvolume = data['full_volume']
            validate___definitions_typed(data__fullvolume, custom_formats, (name_prefix or 'data') + '.full_volume')
        if 'length' in data_keys:
            data_keys.remove('length')
            data__length = data['length']
            validate___definitions_typed(data__length, custom_formats, (name_prefix or 'data') + '.length')
        if 'width' in data_keys:
            data_keys.remove('width')
            data__width = data['width']
            validate___definitions_typed(data__width, custom_formats, (name_prefix or 'data') + '.width')
        if 'points' in data_keys:
            data_keys.remove('points')
            data__points = data['points']
            if not isinstance(data__points, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points must be array', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'type': 'array'}, rule='type')
            data__points_is_list = isinstance(data__points, (list, tuple))
            if data__points_is_list:
                data__points_len = len(data__points)
                if data__points_len < 2:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points must contain at least 2 items', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'minItems': 2}, rule='minItems')
                if data__points_len > 200:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points must contain less than or equal to 200 items', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'maxItems': 200}, rule='maxItems')
                for data__points_x, data__points_item in enumerate(data__points):
                    if not isinstance(data__points_item, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + ' must be object', value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__points_item_is_dict = isinstance(data__points_item, dict)
                    if data__points_item_is_dict:
                        data__points_item__missing_keys = set(['depth', 'volume']) - data__points_item.keys()
                        if data__points_item__missing_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + ' must contain ' + (str(sorted(data__points_item__missing_keys)) + ' properties'), value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'required': ['depth', 'volume']}, rule='required')
                        data__points_item_keys = set(data__points_item.keys())
                        if 'depth' in data__points_item_keys:
                            data__points_item_keys.remove('depth')
                            data__points_item__depth = data__points_item['depth']
                            validate___definitions_typed(data__points_item__depth, custom_formats, (name_prefix or 'data') + '.points[{data__points_x}].depth'.format(**locals()))
                        if 'volume' in data__points_item_keys:
                            data__points_item_keys.remove('volume')
                            data__points_item__volume = data__points_item['volume']
                            validate___definitions_typed(data__points_item__volume, custom_formats, (name_prefix or 'data') + '.points[{data__points_x}].volume'.format(**locals()))
                        if data__points_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + ' must not contain ' + str(data__points_item_keys) + ' properties', value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'rim_depth' in data_keys:
            data_keys.remove('rim_depth')
            data__rimdepth = data['rim_depth']
            validate___definitions_typed(data__rimdepth, custom_formats, (name_prefix or 'data') + '.rim_depth')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_recipe_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['verdict', 'case', 'draw_off_l', 'pours', 'steps', 'totals', 'final', 'reachable', 'shares', 'cautions', 'alternatives']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['verdict', 'case', 'draw_off_l', 'pours', 'steps', 'totals', 'final', 'reachable', 'shares', 'cautions', 'alternatives']}, rule='required')
        data_keys = set(data.keys())
        if 'verdict' in data_keys:
            data_keys.remove('verdict')
            data__verdict = data['verdict']
            if not isinstance(data__verdict, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.verdict must be string', value=data__verdict, name='' + (name_prefix or 'data') + '.verdict', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__verdict, str) and data__verdict == 'on_target' or (isinstance(data__verdict, str) and data__verdict == 'in_band') or (isinstance(data__verdict, str) and data__verdict == 'out_of_band')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".verdict must be one of ['on_target', 'in_band', 'out_of_band']", value=data__verdict, name='' + (name_prefix or 'data') + '.verdict', definition={'enum': ['on_target', 'in_band', 'out_of_band']}, rule='enum')
        if 'case' in data_keys:
            data_keys.remove('case')
            data__case = data['case']
            if not isinstance(data__case, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.case must be string', value=data__case, name='' + (name_prefix or 'data') + '.case', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__case, str) and data__case == 'lean_low' or (isinstance(data__case, str) and data__case == 'lean_full') or (isinstance(data__case, str) and data__case == 'in_range_low') or (isinstance(data__case, str) and data__case == 'in_range_full') or (isinstance(data__case, str) and data__case == 'rich_low') or (isinstance(data__case, str) and data__case == 'rich_full') or (isinstance(data__case, str) and data__case == 'new_charge')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".case must be one of ['lean_low', 'lean_full', 'in_range_low', 'in_range_full', 'rich_low', 'rich_full', 'new_charge']", value=data__case, name='' + (name_prefix or 'data') + '.case', definition={'enum': ['lean_low', 'lean_full', 'in_range_low', 'in_range_full', 'rich_low', 'rich_full', 'new_charge']}, rule='enum')
        if 'draw_off_l' in data_keys:
            data_keys.remove('draw_off_l')
            data__drawoffl = data['draw_off_l']
            if not isinstance(data__drawoffl, (int, float, Decimal)) or isinstance(data__drawoffl, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off_l must be number', value=data__drawoffl, name='' + (name_prefix or 'data') + '.draw_off_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__drawoffl, (int, float, Decimal)) and (not isinstance(data__drawoffl, bool)):
                if data__drawoffl < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off_l must be bigger than or equal to 0', value=data__drawoffl, name='' + (name_prefix or 'data') + '.draw_off_l', definition={'minimum': 0}, rule='minimum')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            if not isinstance(data__pours, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.pours must be array', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'type': 'array'}, rule='type')
            data__pours_is_list = isinstance(data__pours, (list, tuple))
            if data__pours_is_list:
                data__pours_len = len(data__pours)
                for data__pours_x, data__pours_item in enumerate(data__pours):
                    validate___definitions_pour(data__pours_item, custom_formats, (name_prefix or 'data') + '.pours[{data__pours_x}]'.format(**locals()))
        if 'steps' in data_keys:
            data_keys.remove('steps')
            data__steps = data['steps']
            if not isinstance(data__steps, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.steps must be array', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'type': 'array'}, rule='type')
            data__steps_is_list = isinstance(data__steps, (list, tuple))
            if data__steps_is_list:
                data__steps_len = len(data__steps)
                for data__steps_x, data__steps_item in enumerate(data__steps):
                    validate___definitions_step(data__steps_item, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()))
        if 'totals' in data_keys:
            data_keys.remove('totals')
            data__totals = data['totals']
            if not isinstance(data__totals, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals must be object', value=data__totals, name='' + (name_prefix or 'data') + '.totals', definition={'type': 'object'}, rule='type')
            data__totals_is_dict = isinstance(data__totals, dict)
            if data__totals_is_dict:
                data__totals__missing_keys = set(['buckets', 'water_l', 'concentrate_l']) - data__totals.keys()
                if data__totals__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals must contain ' + (str(sorted(data__totals__missing_keys)) + ' properties'), value=data__totals, name='' + (name_prefix or 'data') + '.totals', definition={'required': ['buckets', 'water_l', 'concentrate_l']}, rule='required')
                data__totals_keys = set(data__totals.keys())
                if 'buckets' in data__totals_keys:
                    data__totals_keys.remove('buckets')
                    data__totals__buckets = data__totals['buckets']
                    if not isinstance(data__totals__buckets, int) and (not (isinstance(data__totals__buckets, float) and data__totals__buckets.is_integer())) or isinstance(data__totals__buckets, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals.buckets must be integer', value=data__totals__buckets, name='' + (name_prefix or 'data') + '.totals.buckets', definition={'type': 'integer'}, rule='type')
                    if isinstance(data__totals__buckets, (int, float, Decimal)) and (not isinstance(data__totals__buckets, bool)):
                        if data__totals__buckets < 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals.buckets must be bigger than or equal to 0', value=data__totals__buckets, name='' + (name_prefix or 'data') + '.totals.buckets', definition={'minimum': 0}, rule='minimum')
                if 'water_l' in data__totals_keys:
                    data__totals_keys.remove('water_l')
                    data__totals__waterl = data__totals['water_l']
                    if not isinstance(data__totals__waterl, (int, float, Decimal)) or isinstance(data__totals__waterl, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals.water_l must be number', value=data__totals__waterl, name='' + (name_prefix or 'data') + '.totals.water_l', definition={'type': 'number'}, rule='type')
                if 'concentrate_l' in data__totals_keys:
                    data__totals_keys.remove('concentrate_l')
                    data__totals__concentratel = data__totals['concentrate_l']
                    if not isinstance(data__totals__concentratel, (int, float, Decimal)) or isinstance(data__totals__concentratel, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals.concentrate_l must be number', value=data__totals__concentratel, name='' + (name_prefix or 'data') + '.totals.concentrate_l', definition={'type': 'number'}, rule='type')
                if data__totals_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.totals must not contain ' + str(data__totals_keys) + ' properties', value=data__totals, name='' + (name_prefix or 'data') + '.totals', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'final' in data_keys:
            data_keys.remove('final')
            data__final = data['final']
            if not isinstance(data__final, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final must be object', value=data__final, name='' + (name_prefix or 'data') + '.final', definition={'type': 'object'}, rule='type')
            data__final_is_dict = isinstance(data__final, dict)
            if data__final_is_dict:
                data__final__missing_keys = set(['volume_l', 'strength_pct', 'low_pct', 'high_pct', 'chance_in_band']) - data__final.keys()
                if data__final__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final must contain ' + (str(sorted(data__final__missing_keys)) + ' properties'), value=data__final, name='' + (name_prefix or 'data') + '.final', definition={'required': ['volume_l', 'strength_pct', 'low_pct', 'high_pct', 'chance_in_band']}, rule='required')
                data__final_keys = set(data__final.keys())
                if 'volume_l' in data__final_keys:
                    data__final_keys.remove('volume_l')
                    data__final__volumel = data__final['volume_l']
                    if not isinstance(data__final__volumel, (int, float, Decimal)) or isinstance(data__final__volumel, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.volume_l must be number', value=data__final__volumel, name='' + (name_prefix or 'data') + '.final.volume_l', definition={'type': 'number'}, rule='type')
                if 'strength_pct' in data__final_keys:
                    data__final_keys.remove('strength_pct')
                    data__final__strengthpct = data__final['strength_pct']
                    validate___definitions_measured(data__final__strengthpct, custom_formats, (name_prefix or 'data') + '.final.strength_pct')
                if 'low_pct' in data__final_keys:
                    data__final_keys.remove('low_pct')
                    data__final__lowpct = data__final['low_pct']
                    if not isinstance(data__final__lowpct, (int, float, Decimal)) or isinstance(data__final__lowpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.low_pct must be number', value=data__final__lowpct, name='' + (name_prefix or 'data') + '.final.low_pct', definition={'type': 'number'}, rule='type')
                if 'high_pct' in data__final_keys:
                    data__final_keys.remove('high_pct')
                    data__final__highpct = data__final['high_pct']
                    if not isinstance(data__final__highpct, (int, float, Decimal)) or isinstance(data__final__highpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.high_pct must be number', value=data__final__highpct, name='' + (name_prefix or 'data') + '.final.high_pct', definition={'type': 'number'}, rule='type')
                if 'chance_in_band' in data__final_keys:
                    data__final_keys.remove('chance_in_band')
                    data__final__chanceinband = data__final['chance_in_band']
                    if not isinstance(data__final__chanceinband, (int, float, Decimal)) or isinstance(data__final__chanceinband, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.chance_in_band must be number', value=data__final__chanceinband, name='' + (name_prefix or 'data') + '.final.chance_in_band', definition={'type': 'number'}, rule='type')
                    if isinstance(data__final__chanceinband, (int, float, Decimal)) and (not isinstance(data__final__chanceinband, bool)):
                        if data__final__chanceinband < 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.chance_in_band must be bigger than or equal to 0', value=data__final__chanceinband, name='' + (name_prefix or 'data') + '.final.chance_in_band', definition={'minimum': 0}, rule='minimum')
                        if data__final__chanceinband > 1:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final.chance_in_band must be smaller than or equal to 1', value=data__final__chanceinband, name='' + (name_prefix or 'data') + '.final.chance_in_band', definition={'maximum': 1}, rule='maximum')
                if data__final_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.final must not contain ' + str(data__final_keys) + ' properties', value=data__final, name='' + (name_prefix or 'data') + '.final', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'reachable' in data_keys:
            data_keys.remove('reachable')
            data__reachable = data['reachable']
            if not isinstance(data__reachable, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.reachable must be object', value=data__reachable, name='' + (name_prefix or 'data') + '.reachable', definition={'type': 'object'}, rule='type')
            data__reachable_is_dict = isinstance(data__reachable, dict)
            if data__reachable_is_dict:
                data__reachable__missing_keys = set(['low_pct', 'high_pct']) - data__reachable.keys()
                if data__reachable__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.reachable must contain ' + (str(sorted(data__reachable__missing_keys)) + ' properties'), value=data__reachable, name='' + (name_prefix or 'data') + '.reachable', definition={'required': ['low_pct', 'high_pct']}, rule='required')
                data__reachable_keys = set(data__reachable.keys())
                if 'low_pct' in data__reachable_keys:
                    data__reachable_keys.remove('low_pct')
                    data__reachable__lowpct = data__reachable['low_pct']
                    if not isinstance(data__reachable__lowpct, (int, float, Decimal)) or isinstance(data__reachable__lowpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.reachable.low_pct must be number', value=data__reachable__lowpct, name='' + (name_prefix or 'data') + '.reachable.low_pct', definition={'type': 'number'}, rule='type')
                if 'high_pct' in data__reachable_keys:
                    data__reachable_keys.remove('high_pct')
                    data__reachable__highpct = data__reachable['high_pct']
                    if not isinstance(data__reachable__highpct, (int, float, Decimal)) or isinstance(data__reachable__highpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.reachable.high_pct must be number', value=data__reachable__highpct, name='' + (name_prefix or 'data') + '.reachable.high_pct', definition={'type': 'number'}, rule='type')
                if data__reachable_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.reachable must not contain ' + str(data__reachable_keys) + ' properties', value=data__reachable, name='' + (name_prefix or 'data') + '.reachable', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'shares' in data_keys:
            data_keys.remove('shares')
            data__shares = data['shares']
            if not isinstance(data__shares, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares must be array', value=data__shares, name='' + (name_prefix or 'data') + '.shares', definition={'type': 'array'}, rule='type')
            data__shares_is_list = isinstance(data__shares, (list, tuple))
            if data__shares_is_list:
                data__shares_len = len(data__shares)
                for data__shares_x, data__shares_item in enumerate(data__shares):
                    if not isinstance(data__shares_item, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + ' must be object', value=data__shares_item, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__shares_item_is_dict = isinstance(data__shares_item, dict)
                    if data__shares_item_is_dict:
                        data__shares_item__missing_keys = set(['input', 'share']) - data__shares_item.keys()
                        if data__shares_item__missing_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + ' must contain ' + (str(sorted(data__shares_item__missing_keys)) + ' properties'), value=data__shares_item, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + '', definition={'required': ['input', 'share']}, rule='required')
                        data__shares_item_keys = set(data__shares_item.keys())
                        if 'input' in data__shares_item_keys:
                            data__shares_item_keys.remove('input')
                            data__shares_item__input = data__shares_item['input']
                            if not isinstance(data__shares_item__input, str):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}].input'.format(**locals()) + ' must be string', value=data__shares_item__input, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}].input'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                            if not (isinstance(data__shares_item__input, str) and data__shares_item__input == 'volume' or (isinstance(data__shares_item__input, str) and data__shares_item__input == 'strength') or (isinstance(data__shares_item__input, str) and data__shares_item__input == 'pail_marks') or (isinstance(data__shares_item__input, str) and data__shares_item__input == 'jug_marks')):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}].input'.format(**locals()) + " must be one of ['volume', 'strength', 'pail_marks', 'jug_marks']", value=data__shares_item__input, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}].input'.format(**locals()) + '', definition={'enum': ['volume', 'strength', 'pail_marks', 'jug_marks']}, rule='enum')
                        if 'share' in data__shares_item_keys:
                            data__shares_item_keys.remove('share')
                            data__shares_item__share = data__shares_item['share']
                            if not isinstance(data__shares_item__share, (int, float, Decimal)) or isinstance(data__shares_item__share, bool):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + ' must be number', value=data__shares_item__share, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + '', definition={'type': 'number'}, rule='type')
                            if isinstance(data__shares_item__share, (int, float, Decimal)) and (not isinstance(data__shares_item__share, bool)):
                                if data__shares_item__share < 0:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + ' must be bigger than or equal to 0', value=data__shares_item__share, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + '', definition={'minimum': 0}, rule='minimum')
                                if data__shares_item__share > 1:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + ' must be smaller than or equal to 1', value=data__shares_item__share, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}].share'.format(**locals()) + '', definition={'maximum': 1}, rule='maximum')
                        if data__shares_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + ' must not contain ' + str(data__shares_item_keys) + ' properties', value=data__shares_item, name='' + (name_prefix or 'data') + '.shares[{data__shares_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'cautions' in data_keys:
            data_keys.remove('cautions')
            data__cautions = data['cautions']
            if not isinstance(data__cautions, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.cautions must be array', value=data__cautions, name='' + (name_prefix or 'data') + '.cautions', definition={'type': 'array'}, rule='type')
            data__cautions_is_list = isinstance(data__cautions, (list, tuple))
            if data__cautions_is_list:
                data__cautions_len = len(data__cautions)
                for data__cautions_x, data__cautions_item in enumerate(data__cautions):
                    if not isinstance(data__cautions_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + ' must be string', value=data__cautions_item, name='' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                    if not (isinstance(data__cautions_item, str) and data__cautions_item == 'nothing_to_pour' or (isinstance(data__cautions_item, str) and data__cautions_item == 'above_full_mark') or (isinstance(data__cautions_item, str) and data__cautions_item == 'best_reachable') or (isinstance(data__cautions_item, str) and data__cautions_item == 'marks_too_coarse') or (isinstance(data__cautions_item, str) and data__cautions_item == 'needs_stronger_premix') or (isinstance(data__cautions_item, str) and data__cautions_item == 'needs_weaker_mix') or (isinstance(data__cautions_item, str) and data__cautions_item == 'no_room') or (isinstance(data__cautions_item, str) and data__cautions_item == 'bucket_heavy') or (isinstance(data__cautions_item, str) and data__cautions_item == 'many_buckets') or (isinstance(data__cautions_item, str) and data__cautions_item == 'large_change') or (isinstance(data__cautions_item, str) and data__cautions_item == 'strong_harms_skin') or (isinstance(data__cautions_item, str) and data__cautions_item == 'gloves_and_eyes') or (isinstance(data__cautions_item, str) and data__cautions_item == 'rough') or (isinstance(data__cautions_item, str) and data__cautions_item == 'sensitive_to_dip')):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + " must be one of ['nothing_to_pour', 'above_full_mark', 'best_reachable', 'marks_too_coarse', 'needs_stronger_premix', 'needs_weaker_mix', 'no_room', 'bucket_heavy', 'many_buckets', 'large_change', 'strong_harms_skin', 'gloves_and_eyes', 'rough', 'sensitive_to_dip']", value=data__cautions_item, name='' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + '', definition={'enum': ['nothing_to_pour', 'above_full_mark', 'best_reachable', 'marks_too_coarse', 'needs_stronger_premix', 'needs_weaker_mix', 'no_room', 'bucket_heavy', 'many_buckets', 'large_change', 'strong_harms_skin', 'gloves_and_eyes', 'rough', 'sensitive_to_dip']}, rule='enum')
        if 'alternatives' in data_keys:
            data_keys.remove('alternatives')
            data__alternatives = data['alternatives']
            if not isinstance(data__alternatives, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.alternatives must be array', value=data__alternatives, name='' + (name_prefix or 'data') + '.alternatives', definition={'type': 'array'}, rule='type')
            data__alternatives_is_list = isinstance(data__alternatives, (list, tuple))
            if data__alternatives_is_list:
                data__alternatives_len = len(data__alternatives)
                for data__alternatives_x, data__alternatives_item in enumerate(data__alternatives):
                    if not isinstance(data__alternatives_item, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.alternatives[{data__alternatives_x}]'.format(**locals()) + ' must be object', value=data__alternatives_item, name='' + (name_prefix or 'data') + '.alternatives[{data__alternatives_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_measured(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['value', 'u']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['value', 'u']}, rule='required')
        data_keys = set(data.keys())
        if 'value' in data_keys:
            data_keys.remove('value')
            data__value = data['value']
            if not isinstance(data__value, (int, float, Decimal)) or isinstance(data__value, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.value must be number', value=data__value, name='' + (name_prefix or 'data') + '.value', definition={'type': 'number'}, rule='type')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            if not isinstance(data__u, (int, float, Decimal)) or isinstance(data__u, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.u must be number', value=data__u, name='' + (name_prefix or 'data') + '.u', definition={'type': 'number'}, rule='type')
            if isinstance(data__u, (int, float, Decimal)) and (not isinstance(data__u, bool)):
                if data__u < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.u must be bigger than or equal to 0', value=data__u, name='' + (name_prefix or 'data') + '.u', definition={'minimum': 0}, rule='minimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_step(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.kind must be string', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'bucket' or (isinstance(data__kind, str) and data__kind == 'run') or (isinstance(data__kind, str) and data__kind == 'read_again')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".kind must be one of ['bucket', 'run', 'read_again']", value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['bucket', 'run', 'read_again']}, rule='enum')
        if 'pour' in data_keys:
            data_keys.remove('pour')
            data__pour = data['pour']
            if not isinstance(data__pour, int) and (not (isinstance(data__pour, float) and data__pour.is_integer())) or isinstance(data__pour, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.pour must be integer', value=data__pour, name='' + (name_prefix or 'data') + '.pour', definition={'type': 'integer'}, rule='type')
            if isinstance(data__pour, (int, float, Decimal)) and (not isinstance(data__pour, bool)):
                if data__pour < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.pour must be bigger than or equal to 0', value=data__pour, name='' + (name_prefix or 'data') + '.pour', definition={'minimum': 0}, rule='minimum')
        if 'minutes' in data_keys:
            data_keys.remove('minutes')
            data__minutes = data['minutes']
            if not isinstance(data__minutes, (int, float, Decimal)) or isinstance(data__minutes, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.minutes must be number', value=data__minutes, name='' + (name_prefix or 'data') + '.minutes', definition={'type': 'number'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_pour(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['count', 'water_l', 'concentrate_l']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['count', 'water_l', 'concentrate_l']}, rule='required')
        data_keys = set(data.keys())
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.count must be integer', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
            if isinstance(data__count, (int, float, Decimal)) and (not isinstance(data__count, bool)):
                if data__count < 1:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.count must be bigger than or equal to 1', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'minimum': 1}, rule='minimum')
        if 'water_l' in data_keys:
            data_keys.remove('water_l')
            data__waterl = data['water_l']
            if not isinstance(data__waterl, (int, float, Decimal)) or isinstance(data__waterl, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.water_l must be number', value=data__waterl, name='' + (name_prefix or 'data') + '.water_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__waterl, (int, float, Decimal)) and (not isinstance(data__waterl, bool)):
                if data__waterl < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.water_l must be bigger than or equal to 0', value=data__waterl, name='' + (name_prefix or 'data') + '.water_l', definition={'minimum': 0}, rule='minimum')
        if 'concentrate_l' in data_keys:
            data_keys.remove('concentrate_l')
            data__concentratel = data['concentrate_l']
            if not isinstance(data__concentratel, (int, float, Decimal)) or isinstance(data__concentratel, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.concentrate_l must be number', value=data__concentratel, name='' + (name_prefix or 'data') + '.concentrate_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__concentratel, (int, float, Decimal)) and (not isinstance(data__concentratel, bool)):
                if data__concentratel < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.concentrate_l must be bigger than or equal to 0', value=data__concentratel, name='' + (name_prefix or 'data') + '.concentrate_l', definition={'minimum': 0}, rule='minimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_recipe_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['sump', 'fill_to_l', 'target', 'mixing', 'bucket', 'draw_off']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['sump', 'fill_to_l', 'target', 'mixing', 'bucket', 'draw_off']}, rule='required')
        data_keys = set(data.keys())
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            if not isinstance(data__sump, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump must be object', value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'type': 'object'}, rule='type')
            data__sump_is_dict = isinstance(data__sump, dict)
            if data__sump_is_dict:
                data__sump__missing_keys = set(['volume_l', 'strength_pct']) - data__sump.keys()
                if data__sump__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump must contain ' + (str(sorted(data__sump__missing_keys)) + ' properties'), value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'required': ['volume_l', 'strength_pct']}, rule='required')
                data__sump_keys = set(data__sump.keys())
                if 'volume_l' in data__sump_keys:
                    data__sump_keys.remove('volume_l')
                    data__sump__volumel = data__sump['volume_l']
                    if not isinstance(data__sump__volumel, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l must be object', value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'type': 'object'}, rule='type')
                    data__sump__volumel_is_dict = isinstance(data__sump__volumel, dict)
                    if data__sump__volumel_is_dict:
                        data__sump__volumel__missing_keys = set(['value', 'u']) - data__sump__volumel.keys()
                        if data__sump__volumel__missing_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l must contain ' + (str(sorted(data__sump__volumel__missing_keys)) + ' properties'), value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'required': ['value', 'u']}, rule='required')
                        data__sump__volumel_keys = set(data__sump__volumel.keys())
                        if 'value' in data__sump__volumel_keys:
                            data__sump__volumel_keys.remove('value')
                            data__sump__volumel__value = data__sump__volumel['value']
                            if not isinstance(data__sump__volumel__value, (int, float, Decimal)) or isinstance(data__sump__volumel__value, bool):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l.value must be number', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__volumel__value, (int, float, Decimal)) and (not isinstance(data__sump__volumel__value, bool)):
                                if data__sump__volumel__value < 0:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l.value must be bigger than or equal to 0', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'minimum': 0}, rule='minimum')
                                if data__sump__volumel__value > 200000:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l.value must be smaller than or equal to 200000', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'maximum': 200000}, rule='maximum')
                        if 'u' in data__sump__volumel_keys:
                            data__sump__volumel_keys.remove('u')
                            data__sump__volumel__u = data__sump__volumel['u']
                            if not isinstance(data__sump__volumel__u, (int, float, Decimal)) or isinstance(data__sump__volumel__u, bool):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l.u must be number', value=data__sump__volumel__u, name='' + (name_prefix or 'data') + '.sump.volume_l.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__volumel__u, (int, float, Decimal)) and (not isinstance(data__sump__volumel__u, bool)):
                                if data__sump__volumel__u < 0:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l.u must be bigger than or equal to 0', value=data__sump__volumel__u, name='' + (name_prefix or 'data') + '.sump.volume_l.u', definition={'minimum': 0}, rule='minimum')
                        if data__sump__volumel_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l must not contain ' + str(data__sump__volumel_keys) + ' properties', value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'additionalProperties': False}, rule='additionalProperties')
                if 'strength_pct' in data__sump_keys:
                    data__sump_keys.remove('strength_pct')
                    data__sump__strengthpct = data__sump['strength_pct']
                    if not isinstance(data__sump__strengthpct, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct must be object', value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'type': 'object'}, rule='type')
                    data__sump__strengthpct_is_dict = isinstance(data__sump__strengthpct, dict)
                    if data__sump__strengthpct_is_dict:
                        data__sump__strengthpct__missing_keys = set(['value', 'u']) - data__sump__strengthpct.keys()
                        if data__sump__strengthpct__missing_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct must contain ' + (str(sorted(data__sump__strengthpct__missing_keys)) + ' properties'), value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'required': ['value', 'u']}, rule='required')
                        data__sump__strengthpct_keys = set(data__sump__strengthpct.keys())
                        if 'value' in data__sump__strengthpct_keys:
                            data__sump__strengthpct_keys.remove('value')
                            data__sump__strengthpct__value = data__sump__strengthpct['value']
                            if not isinstance(data__sump__strengthpct__value, (int, float, Decimal)) or isinstance(data__sump__strengthpct__value, bool):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct.value must be number', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__strengthpct__value, (int, float, Decimal)) and (not isinstance(data__sump__strengthpct__value, bool)):
                                if data__sump__strengthpct__value < 0:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct.value must be bigger than or equal to 0', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'minimum': 0}, rule='minimum')
                                if data__sump__strengthpct__value >= 40:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct.value must be smaller than 40', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'exclusiveMaximum': 40}, rule='exclusiveMaximum')
                        if 'u' in data__sump__strengthpct_keys:
                            data__sump__strengthpct_keys.remove('u')
                            data__sump__strengthpct__u = data__sump__strengthpct['u']
                            if not isinstance(data__sump__strengthpct__u, (int, float, Decimal)) or isinstance(data__sump__strengthpct__u, bool):
                                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct.u must be number', value=data__sump__strengthpct__u, name='' + (name_prefix or 'data') + '.sump.strength_pct.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__strengthpct__u, (int, float, Decimal)) and (not isinstance(data__sump__strengthpct__u, bool)):
                                if data__sump__strengthpct__u < 0:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct.u must be bigger than or equal to 0', value=data__sump__strengthpct__u, name='' + (name_prefix or 'data') + '.sump.strength_pct.u', definition={'minimum': 0}, rule='minimum')
                        if data__sump__strengthpct_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct must not contain ' + str(data__sump__strengthpct_keys) + ' properties', value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'additionalProperties': False}, rule='additionalProperties')
                if data__sump_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump must not contain ' + str(data__sump_keys) + ' properties', value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'fill_to_l' in data_keys:
            data_keys.remove('fill_to_l')
            data__filltol = data['fill_to_l']
            if not isinstance(data__filltol, (int, float, Decimal)) or isinstance(data__filltol, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.fill_to_l must be number', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__filltol, (int, float, Decimal)) and (not isinstance(data__filltol, bool)):
                if data__filltol > 200000:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.fill_to_l must be smaller than or equal to 200000', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'maximum': 200000}, rule='maximum')
                if data__filltol <= 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.fill_to_l must be bigger than 0', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            if not isinstance(data__target, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target must be object', value=data__target, name='' + (name_prefix or 'data') + '.target', definition={'type': 'object'}, rule='type')
            data__target_is_dict = isinstance(data__target, dict)
            if data__target_is_dict:
                data__target__missing_keys = set(['low_pct', 'aim_pct', 'high_pct']) - data__target.keys()
                if data__target__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target must contain ' + (str(sorted(data__target__missing_keys)) + ' properties'), value=data__target, name='' + (name_prefix or 'data') + '.target', definition={'required': ['low_pct', 'aim_pct', 'high_pct']}, rule='required')
                data__target_keys = set(data__target.keys())
                if 'low_pct' in data__target_keys:
                    data__target_keys.remove('low_pct')
                    data__target__lowpct = data__target['low_pct']
                    if not isinstance(data__target__lowpct, (int, float, Decimal)) or isinstance(data__target__lowpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.low_pct must be number', value=data__target__lowpct, name='' + (name_prefix or 'data') + '.target.low_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__target__lowpct, (int, float, Decimal)) and (not isinstance(data__target__lowpct, bool)):
                        if data__target__lowpct <= 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.low_pct must be bigger than 0', value=data__target__lowpct, name='' + (name_prefix or 'data') + '.target.low_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                        if data__target__lowpct >= 100:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.low_pct must be smaller than 100', value=data__target__lowpct, name='' + (name_prefix or 'data') + '.target.low_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
                if 'aim_pct' in data__target_keys:
                    data__target_keys.remove('aim_pct')
                    data__target__aimpct = data__target['aim_pct']
                    if not isinstance(data__target__aimpct, (int, float, Decimal)) or isinstance(data__target__aimpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.aim_pct must be number', value=data__target__aimpct, name='' + (name_prefix or 'data') + '.target.aim_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__target__aimpct, (int, float, Decimal)) and (not isinstance(data__target__aimpct, bool)):
                        if data__target__aimpct <= 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.aim_pct must be bigger than 0', value=data__target__aimpct, name='' + (name_prefix or 'data') + '.target.aim_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                        if data__target__aimpct >= 100:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.aim_pct must be smaller than 100', value=data__target__aimpct, name='' + (name_prefix or 'data') + '.target.aim_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
                if 'high_pct' in data__target_keys:
                    data__target_keys.remove('high_pct')
                    data__target__highpct = data__target['high_pct']
                    if not isinstance(data__target__highpct, (int, float, Decimal)) or isinstance(data__target__highpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.high_pct must be number', value=data__target__highpct, name='' + (name_prefix or 'data') + '.target.high_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__target__highpct, (int, float, Decimal)) and (not isinstance(data__target__highpct, bool)):
                        if data__target__highpct <= 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.high_pct must be bigger than 0', value=data__target__highpct, name='' + (name_prefix or 'data') + '.target.high_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                        if data__target__highpct >= 100:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target.high_pct must be smaller than 100', value=data__target__highpct, name='' + (name_prefix or 'data') + '.target.high_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
                if data__target_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.target must not contain ' + str(data__target_keys) + ' properties', value=data__target, name='' + (name_prefix or 'data') + '.target', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            if not isinstance(data__mixing, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing must be object', value=data__mixing, name='' + (name_prefix or 'data') + '.mixing', definition={'type': 'object'}, rule='type')
            data__mixing_is_dict = isinstance(data__mixing, dict)
            if data__mixing_is_dict:
                data__mixing__missing_keys = set(['strong_pct', 'weak_pct', 'closeness_pct']) - data__mixing.keys()
                if data__mixing__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing must contain ' + (str(sorted(data__mixing__missing_keys)) + ' properties'), value=data__mixing, name='' + (name_prefix or 'data') + '.mixing', definition={'required': ['strong_pct', 'weak_pct', 'closeness_pct']}, rule='required')
                data__mixing_keys = set(data__mixing.keys())
                if 'strong_pct' in data__mixing_keys:
                    data__mixing_keys.remove('strong_pct')
                    data__mixing__strongpct = data__mixing['strong_pct']
                    if not isinstance(data__mixing__strongpct, (int, float, Decimal)) or isinstance(data__mixing__strongpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.strong_pct must be number', value=data__mixing__strongpct, name='' + (name_prefix or 'data') + '.mixing.strong_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__mixing__strongpct, (int, float, Decimal)) and (not isinstance(data__mixing__strongpct, bool)):
                        if data__mixing__strongpct > 100:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.strong_pct must be smaller than or equal to 100', value=data__mixing__strongpct, name='' + (name_prefix or 'data') + '.mixing.strong_pct', definition={'maximum': 100}, rule='maximum')
                        if data__mixing__strongpct <= 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.strong_pct must be bigger than 0', value=data__mixing__strongpct, name='' + (name_prefix or 'data') + '.mixing.strong_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if 'weak_pct' in data__mixing_keys:
                    data__mixing_keys.remove('weak_pct')
                    data__mixing__weakpct = data__mixing['weak_pct']
                    if not isinstance(data__mixing__weakpct, (int, float, Decimal)) or isinstance(data__mixing__weakpct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.weak_pct must be number', value=data__mixing__weakpct, name='' + (name_prefix or 'data') + '.mixing.weak_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__mixing__weakpct, (int, float, Decimal)) and (not isinstance(data__mixing__weakpct, bool)):
                        if data__mixing__weakpct < 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.weak_pct must be bigger than or equal to 0', value=data__mixing__weakpct, name='' + (name_prefix or 'data') + '.mixing.weak_pct', definition={'minimum': 0}, rule='minimum')
                        if data__mixing__weakpct >= 100:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.weak_pct must be smaller than 100', value=data__mixing__weakpct, name='' + (name_prefix or 'data') + '.mixing.weak_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
                if 'closeness_pct' in data__mixing_keys:
                    data__mixing_keys.remove('closeness_pct')
                    data__mixing__closenesspct = data__mixing['closeness_pct']
                    if not isinstance(data__mixing__closenesspct, (int, float, Decimal)) or isinstance(data__mixing__closenesspct, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.closeness_pct must be number', value=data__mixing__closenesspct, name='' + (name_prefix or 'data') + '.mixing.closeness_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__mixing__closenesspct, (int, float, Decimal)) and (not isinstance(data__mixing__closenesspct, bool)):
                        if data__mixing__closenesspct > 10:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.closeness_pct must be smaller than or equal to 10', value=data__mixing__closenesspct, name='' + (name_prefix or 'data') + '.mixing.closeness_pct', definition={'maximum': 10}, rule='maximum')
                        if data__mixing__closenesspct <= 0:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing.closeness_pct must be bigger than 0', value=data__mixing__closenesspct, name='' + (name_prefix or 'data') + '.mixing.closeness_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__mixing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.mixing must not contain ' + str(data__mixing_keys) + ' properties', value=data__mixing, name='' + (name_prefix or 'data') + '.mixing', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'bucket' in data_keys:
            data_keys.remove('bucket')
            data__bucket = data['bucket']
            if not isinstance(data__bucket, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket must be object', value=data__bucket, name='' + (name_prefix or 'data') + '.bucket', definition={'type': 'object'}, rule='type')
            data__bucket_is_dict = isinstance(data__bucket, dict)
            if data__bucket_is_dict:
                data__bucket__missing_keys = set(['usable_l', 'water_mark_l', 'jug_mark_l']) - data__bucket.keys()
                if data__bucket__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket must contain ' + (str(sorted(data__bucket__missing_keys)) + ' properties'), value=data__bucket, name='' + (name_prefix or 'data') + '.bucket', definition={'required': ['usable_l', 'water_mark_l', 'jug_mark_l']}, rule='required')
                data__bucket_keys = set(data__bucket.keys())
                if 'usable_l' in data__bucket_keys:
                    data__bucket_keys.remove('usable_l')
                    data__bucket__usablel = data__bucket['usable_l']
                    if not isinstance(data__bucket__usablel, (int, float, Decimal)) or isinstance(data__bucket__usablel, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.usable_l must be number', value=data__bucket__usablel, name='' + (name_prefix or 'data') + '.bucket.usable_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__bucket__usablel, (int, float, Decimal)) and (not isinstance(data__bucket__usablel, bool)):
                        if data__bucket__usablel < 0.1:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.usable_l must be bigger than or equal to 0.1', value=data__bucket__usablel, name='' + (name_prefix or 'data') + '.bucket.usable_l', definition={'minimum': 0.1}, rule='minimum')
                        if data__bucket__usablel > 1000:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.usable_l must be smaller than or equal to 1000', value=data__bucket__usablel, name='' + (name_prefix or 'data') + '.bucket.usable_l', definition={'maximum': 1000}, rule='maximum')
                if 'water_mark_l' in data__bucket_keys:
                    data__bucket_keys.remove('water_mark_l')
                    data__bucket__watermarkl = data__bucket['water_mark_l']
                    if not isinstance(data__bucket__watermarkl, (int, float, Decimal)) or isinstance(data__bucket__watermarkl, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.water_mark_l must be number', value=data__bucket__watermarkl, name='' + (name_prefix or 'data') + '.bucket.water_mark_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__bucket__watermarkl, (int, float, Decimal)) and (not isinstance(data__bucket__watermarkl, bool)):
                        if data__bucket__watermarkl < 0.001:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.water_mark_l must be bigger than or equal to 0.001', value=data__bucket__watermarkl, name='' + (name_prefix or 'data') + '.bucket.water_mark_l', definition={'minimum': 0.001}, rule='minimum')
                        if data__bucket__watermarkl > 1000:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.water_mark_l must be smaller than or equal to 1000', value=data__bucket__watermarkl, name='' + (name_prefix or 'data') + '.bucket.water_mark_l', definition={'maximum': 1000}, rule='maximum')
                if 'jug_mark_l' in data__bucket_keys:
                    data__bucket_keys.remove('jug_mark_l')
                    data__bucket__jugmarkl = data__bucket['jug_mark_l']
                    if not isinstance(data__bucket__jugmarkl, (int, float, Decimal)) or isinstance(data__bucket__jugmarkl, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.jug_mark_l must be number', value=data__bucket__jugmarkl, name='' + (name_prefix or 'data') + '.bucket.jug_mark_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__bucket__jugmarkl, (int, float, Decimal)) and (not isinstance(data__bucket__jugmarkl, bool)):
                        if data__bucket__jugmarkl < 0.001:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.jug_mark_l must be bigger than or equal to 0.001', value=data__bucket__jugmarkl, name='' + (name_prefix or 'data') + '.bucket.jug_mark_l', definition={'minimum': 0.001}, rule='minimum')
                        if data__bucket__jugmarkl > 1000:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket.jug_mark_l must be smaller than or equal to 1000', value=data__bucket__jugmarkl, name='' + (name_prefix or 'data') + '.bucket.jug_mark_l', definition={'maximum': 1000}, rule='maximum')
                if data__bucket_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.bucket must not contain ' + str(data__bucket_keys) + ' properties', value=data__bucket, name='' + (name_prefix or 'data') + '.bucket', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            if not isinstance(data__drawoff, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off must be object', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'type': 'object'}, rule='type')
            data__drawoff_is_dict = isinstance(data__drawoff, dict)
            if data__drawoff_is_dict:
                data__drawoff__missing_keys = set(['allowed', 'mark_l']) - data__drawoff.keys()
                if data__drawoff__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off must contain ' + (str(sorted(data__drawoff__missing_keys)) + ' properties'), value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'required': ['allowed', 'mark_l']}, rule='required')
                data__drawoff_keys = set(data__drawoff.keys())
                if 'allowed' in data__drawoff_keys:
                    data__drawoff_keys.remove('allowed')
                    data__drawoff__allowed = data__drawoff['allowed']
                    if not isinstance(data__drawoff__allowed, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off.allowed must be boolean', value=data__drawoff__allowed, name='' + (name_prefix or 'data') + '.draw_off.allowed', definition={'type': 'boolean'}, rule='type')
                if 'mark_l' in data__drawoff_keys:
                    data__drawoff_keys.remove('mark_l')
                    data__drawoff__markl = data__drawoff['mark_l']
                    if not isinstance(data__drawoff__markl, (int, float, Decimal)) or isinstance(data__drawoff__markl, bool):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off.mark_l must be number', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__drawoff__markl, (int, float, Decimal)) and (not isinstance(data__drawoff__markl, bool)):
                        if data__drawoff__markl < 0.001:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off.mark_l must be bigger than or equal to 0.001', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'minimum': 0.001}, rule='minimum')
                        if data__drawoff__markl > 1000:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off.mark_l must be smaller than or equal to 1000', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'maximum': 1000}, rule='maximum')
                if data__drawoff_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off must not contain ' + str(data__drawoff_keys) + ' properties', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'additionalProperties': False}, rule='additionalProperties')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_check_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['assessment', 'request', 'plan', 'shown', 'after', 'doubts']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['assessment', 'request', 'plan', 'shown', 'after', 'doubts']}, rule='required')
        data_keys = set(data.keys())
        if 'assessment' in data_keys:
            data_keys.remove('assessment')
            data__assessment = data['assessment']
            validate___definitions_assess_sump_result(data__assessment, custom_formats, (name_prefix or 'data') + '.assessment')
        if 'request' in data_keys:
            data_keys.remove('request')
            data__request = data['request']
            validate___definitions_plan_recipe_body(data__request, custom_formats, (name_prefix or 'data') + '.request')
        if 'plan' in data_keys:
            data_keys.remove('plan')
            data__plan = data['plan']
            validate___definitions_plan_recipe_result(data__plan, custom_formats, (name_prefix or 'data') + '.plan')
        if 'shown' in data_keys:
            data_keys.remove('shown')
            data__shown = data['shown']
            if not isinstance(data__shown, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must be object', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'type': 'object'}, rule='type')
            data__shown_is_dict = isinstance(data__shown, dict)
            if data__shown_is_dict:
                data__shown__missing_keys = set(['pours', 'water', 'concentrate', 'added', 'strength', 'low', 'high', 'volume', 'aim', 'band_low', 'band_high', 'reach_low', 'reach_high']) - data__shown.keys()
                if data__shown__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must contain ' + (str(sorted(data__shown__missing_keys)) + ' properties'), value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'required': ['pours', 'water', 'concentrate', 'added', 'strength', 'low', 'high', 'volume', 'aim', 'band_low', 'band_high', 'reach_low', 'reach_high']}, rule='required')
                data__shown_keys = set(data__shown.keys())
                if 'pours' in data__shown_keys:
                    data__shown_keys.remove('pours')
                    data__shown__pours = data__shown['pours']
                    if not isinstance(data__shown__pours, (list, tuple)):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown.pours must be array', value=data__shown__pours, name='' + (name_prefix or 'data') + '.shown.pours', definition={'type': 'array'}, rule='type')
                    data__shown__pours_is_list = isinstance(data__shown__pours, (list, tuple))
                    if data__shown__pours_is_list:
                        data__shown__pours_len = len(data__shown__pours)
                        for data__shown__pours_x, data__shown__pours_item in enumerate(data__shown__pours):
                            validate___definitions_pour_shown(data__shown__pours_item, custom_formats, (name_prefix or 'data') + '.shown.pours[{data__shown__pours_x}]'.format(**locals()))
                if 'water' in data__shown_keys:
                    data__shown_keys.remove('water')
                    data__shown__water = data__shown['water']
                    validate___definitions_shown(data__shown__water, custom_formats, (name_prefix or 'data') + '.shown.water')
                if 'concentrate' in data__shown_keys:
                    data__shown_keys.remove('concentrate')
                    data__shown__concentrate = data__shown['concentrate']
                    validate___definitions_shown(data__shown__concentrate, custom_formats, (name_prefix or 'data') + '.shown.concentrate')
                if 'added' in data__shown_keys:
                    data__shown_keys.remove('added')
                    data__shown__added = data__shown['added']
                    validate___definitions_shown(data__shown__added, custom_formats, (name_prefix or 'data') + '.shown.added')
                if 'strength' in data__shown_keys:
                    data__shown_keys.remove('strength')
                    data__shown__strength = data__shown['strength']
                    validate___definitions_shown(data__shown__strength, custom_formats, (name_prefix or 'data') + '.shown.strength')
                if 'low' in data__shown_keys:
                    data__shown_keys.remove('low')
                    data__shown__low = data__shown['low']
                    validate___definitions_shown(data__shown__low, custom_formats, (name_prefix or 'data') + '.shown.low')
                if 'high' in data__shown_keys:
                    data__shown_keys.remove('high')
                    data__shown__high = data__shown['high']
                    validate___definitions_shown(data__shown__high, custom_formats, (name_prefix or 'data') + '.shown.high')
                if 'volume' in data__shown_keys:
                    data__shown_keys.remove('volume')
                    data__shown__volume = data__shown['volume']
                    validate___definitions_shown(data__shown__volume, custom_formats, (name_prefix or 'data') + '.shown.volume')
                if 'aim' in data__shown_keys:
                    data__shown_keys.remove('aim')
                    data__shown__aim = data__shown['aim']
                    validate___definitions_shown(data__shown__aim, custom_formats, (name_prefix or 'data') + '.shown.aim')
                if 'band_low' in data__shown_keys:
                    data__shown_keys.remove('band_low')
                    data__shown__bandlow = data__shown['band_low']
                    validate___definitions_shown(data__shown__bandlow, custom_formats, (name_prefix or 'data') + '.shown.band_low')
                if 'band_high' in data__shown_keys:
                    data__shown_keys.remove('band_high')
                    data__shown__bandhigh = data__shown['band_high']
                    validate___definitions_shown(data__shown__bandhigh, custom_formats, (name_prefix or 'data') + '.shown.band_high')
                if 'reach_low' in data__shown_keys:
                    data__shown_keys.remove('reach_low')
                    data__shown__reachlow = data__shown['reach_low']
                    validate___definitions_shown(data__shown__reachlow, custom_formats, (name_prefix or 'data') + '.shown.reach_low')
                if 'reach_high' in data__shown_keys:
                    data__shown_keys.remove('reach_high')
                    data__shown__reachhigh = data__shown['reach_high']
                    validate___definitions_shown(data__shown__reachhigh, custom_formats, (name_prefix or 'data') + '.shown.reach_high')
                if data__shown_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must not contain ' + str(data__shown_keys) + ' properties', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'after' in data_keys:
            data_keys.remove('after')
            data__after = data['after']
            validate___definitions_section(data__after, custom_formats, (name_prefix or 'data') + '.after')
        if 'doubts' in data_keys:
            data_keys.remove('doubts')
            data__doubts = data['doubts']
            if not isinstance(data__doubts, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.doubts must be array', value=data__doubts, name='' + (name_prefix or 'data') + '.doubts', definition={'type': 'array'}, rule='type')
            data__doubts_is_list = isinstance(data__doubts, (list, tuple))
            if data__doubts_is_list:
                data__doubts_len = len(data__doubts)
                for data__doubts_x, data__doubts_item in enumerate(data__doubts):
                    validate___definitions_doubt(data__doubts_item, custom_formats, (name_prefix or 'data') + '.doubts[{data__doubts_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_section(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['level', 'full_mark']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['level', 'full_mark']}, rule='required')
        data_keys = set(data.keys())
        if 'level' in data_keys:
            data_keys.remove('level')
            data__level = data['level']
            if not isinstance(data__level, (int, float, Decimal)) or isinstance(data__level, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.level must be number', value=data__level, name='' + (name_prefix or 'data') + '.level', definition={'type': 'number'}, rule='type')
            if isinstance(data__level, (int, float, Decimal)) and (not isinstance(data__level, bool)):
                if data__level < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.level must be bigger than or equal to 0', value=data__level, name='' + (name_prefix or 'data') + '.level', definition={'minimum': 0}, rule='minimum')
        if 'full_mark' in data_keys:
            data_keys.remove('full_mark')
            data__fullmark = data['full_mark']
            if not isinstance(data__fullmark, (int, float, Decimal)) or isinstance(data__fullmark, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.full_mark must be number', value=data__fullmark, name='' + (name_prefix or 'data') + '.full_mark', definition={'type': 'number'}, rule='type')
        if 'dots' in data_keys:
            data_keys.remove('dots')
            data__dots = data['dots']
            if not isinstance(data__dots, int) and (not (isinstance(data__dots, float) and data__dots.is_integer())) or isinstance(data__dots, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.dots must be integer', value=data__dots, name='' + (name_prefix or 'data') + '.dots', definition={'type': 'integer'}, rule='type')
            if isinstance(data__dots, (int, float, Decimal)) and (not isinstance(data__dots, bool)):
                if data__dots < 0:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.dots must be bigger than or equal to 0', value=data__dots, name='' + (name_prefix or 'data') + '.dots', definition={'minimum': 0}, rule='minimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_pour_shown(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['count', 'water', 'concentrate', 'total', 'strength', 'weight', 'water_share', 'concentrate_share']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['count', 'water', 'concentrate', 'total', 'strength', 'weight', 'water_share', 'concentrate_share']}, rule='required')
        data_keys = set(data.keys())
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.count must be integer', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_shown(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_shown(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if 'total' in data_keys:
            data_keys.remove('total')
            data__total = data['total']
            validate___definitions_shown(data__total, custom_formats, (name_prefix or 'data') + '.total')
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_shown(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'weight' in data_keys:
            data_keys.remove('weight')
            data__weight = data['weight']
            validate___definitions_shown(data__weight, custom_formats, (name_prefix or 'data') + '.weight')
        if 'water_share' in data_keys:
            data_keys.remove('water_share')
            data__watershare = data['water_share']
            if not isinstance(data__watershare, (int, float, Decimal)) or isinstance(data__watershare, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.water_share must be number', value=data__watershare, name='' + (name_prefix or 'data') + '.water_share', definition={'type': 'number'}, rule='type')
        if 'concentrate_share' in data_keys:
            data_keys.remove('concentrate_share')
            data__concentrateshare = data['concentrate_share']
            if not isinstance(data__concentrateshare, (int, float, Decimal)) or isinstance(data__concentrateshare, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.concentrate_share must be number', value=data__concentrateshare, name='' + (name_prefix or 'data') + '.concentrate_share', definition={'type': 'number'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_check_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine', 'dip', 'reading']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'dip', 'reading']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'aim' in data_keys:
            data_keys.remove('aim')
            data__aim = data['aim']
            validate___definitions_typed(data__aim, custom_formats, (name_prefix or 'data') + '.aim')
        if 'fill_to_depth' in data_keys:
            data_keys.remove('fill_to_depth')
            data__filltodepth = data['fill_to_depth']
            validate___definitions_typed(data__filltodepth, custom_formats, (name_prefix or 'data') + '.fill_to_depth')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_reading_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['shows']}, rule='required')
        data_keys = set(data.keys())
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.how must be string', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'digital' or (isinstance(data__how, str) and data__how == 'optical') or (isinstance(data__how, str) and data__how == 'optical_oily') or (isinstance(data__how, str) and data__how == 'blurred')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".how must be one of ['digital', 'optical', 'optical_oily', 'blurred']", value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['digital', 'optical', 'optical_oily', 'blurred']}, rule='enum')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            validate___definitions_typed(data__u, custom_formats, (name_prefix or 'data') + '.u')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_dip_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['depth']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['depth']}, rule='required')
        data_keys = set(data.keys())
        if 'depth' in data_keys:
            data_keys.remove('depth')
            data__depth = data['depth']
            validate___definitions_typed(data__depth, custom_formats, (name_prefix or 'data') + '.depth')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.how must be string', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'hard_floor' or (isinstance(data__how, str) and data__how == 'through_slot') or (isinstance(data__how, str) and data__how == 'running') or (isinstance(data__how, str) and data__how == 'chips')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".how must be one of ['hard_floor', 'through_slot', 'running', 'chips']", value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['hard_floor', 'through_slot', 'running', 'chips']}, rule='enum')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            validate___definitions_typed(data__u, custom_formats, (name_prefix or 'data') + '.u')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_describe_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['pycore', 'python', 'schema', 'operations', 'quantities', 'units']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['pycore', 'python', 'schema', 'operations', 'quantities', 'units']}, rule='required')
        data_keys = set(data.keys())
        if 'pycore' in data_keys:
            data_keys.remove('pycore')
            data__pycore = data['pycore']
            if not isinstance(data__pycore, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.pycore must be string', value=data__pycore, name='' + (name_prefix or 'data') + '.pycore', definition={'type': 'string'}, rule='type')
        if 'python' in data_keys:
            data_keys.remove('python')
            data__python = data['python']
            if not isinstance(data__python, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.python must be string', value=data__python, name='' + (name_prefix or 'data') + '.python', definition={'type': 'string'}, rule='type')
        if 'schema' in data_keys:
            data_keys.remove('schema')
            data__schema = data['schema']
            if not isinstance(data__schema, int) and (not (isinstance(data__schema, float) and data__schema.is_integer())) or isinstance(data__schema, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.schema must be integer', value=data__schema, name='' + (name_prefix or 'data') + '.schema', definition={'type': 'integer'}, rule='type')
        if 'operations' in data_keys:
            data_keys.remove('operations')
            data__operations = data['operations']
            if not isinstance(data__operations, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.operations must be array', value=data__operations, name='' + (name_prefix or 'data') + '.operations', definition={'type': 'array'}, rule='type')
            data__operations_is_list = isinstance(data__operations, (list, tuple))
            if data__operations_is_list:
                data__operations_len = len(data__operations)
                for data__operations_x, data__operations_item in enumerate(data__operations):
                    if not isinstance(data__operations_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.operations[{data__operations_x}]'.format(**locals()) + ' must be string', value=data__operations_item, name='' + (name_prefix or 'data') + '.operations[{data__operations_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'quantities' in data_keys:
            data_keys.remove('quantities')
            data__quantities = data['quantities']
            if not isinstance(data__quantities, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.quantities must be array', value=data__quantities, name='' + (name_prefix or 'data') + '.quantities', definition={'type': 'array'}, rule='type')
            data__quantities_is_list = isinstance(data__quantities, (list, tuple))
            if data__quantities_is_list:
                data__quantities_len = len(data__quantities)
                for data__quantities_x, data__quantities_item in enumerate(data__quantities):
                    if not isinstance(data__quantities_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.quantities[{data__quantities_x}]'.format(**locals()) + ' must be string', value=data__quantities_item, name='' + (name_prefix or 'data') + '.quantities[{data__quantities_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            if not isinstance(data__units, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.units must be array', value=data__units, name='' + (name_prefix or 'data') + '.units', definition={'type': 'array'}, rule='type')
            data__units_is_list = isinstance(data__units, (list, tuple))
            if data__units_is_list:
                data__units_len = len(data__units)
                for data__units_x, data__units_item in enumerate(data__units):
                    if not isinstance(data__units_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.units[{data__units_x}]'.format(**locals()) + ' must be string', value=data__units_item, name='' + (name_prefix or 'data') + '.units[{data__units_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_describe_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_assess_sump_result(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['notes']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['notes']}, rule='required')
        data_keys = set(data.keys())
        if 'notes' in data_keys:
            data_keys.remove('notes')
            data__notes = data['notes']
            if not isinstance(data__notes, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.notes must be array', value=data__notes, name='' + (name_prefix or 'data') + '.notes', definition={'type': 'array'}, rule='type')
            data__notes_is_list = isinstance(data__notes, (list, tuple))
            if data__notes_is_list:
                data__notes_len = len(data__notes)
                for data__notes_x, data__notes_item in enumerate(data__notes):
                    if not isinstance(data__notes_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.notes[{data__notes_x}]'.format(**locals()) + ' must be string', value=data__notes_item, name='' + (name_prefix or 'data') + '.notes[{data__notes_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                    if not (isinstance(data__notes_item, str) and data__notes_item == 'no_factor' or (isinstance(data__notes_item, str) and data__notes_item == 'above_full_mark') or (isinstance(data__notes_item, str) and data__notes_item == 'may_be_leaner')):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.notes[{data__notes_x}]'.format(**locals()) + " must be one of ['no_factor', 'above_full_mark', 'may_be_leaner']", value=data__notes_item, name='' + (name_prefix or 'data') + '.notes[{data__notes_x}]'.format(**locals()) + '', definition={'enum': ['no_factor', 'above_full_mark', 'may_be_leaner']}, rule='enum')
        if 'level' in data_keys:
            data_keys.remove('level')
            data__level = data['level']
            validate___definitions_level(data__level, custom_formats, (name_prefix or 'data') + '.level')
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_strength(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'section' in data_keys:
            data_keys.remove('section')
            data__section = data['section']
            validate___definitions_section(data__section, custom_formats, (name_prefix or 'data') + '.section')
        if 'doubts' in data_keys:
            data_keys.remove('doubts')
            data__doubts = data['doubts']
            if not isinstance(data__doubts, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.doubts must be array', value=data__doubts, name='' + (name_prefix or 'data') + '.doubts', definition={'type': 'array'}, rule='type')
            data__doubts_is_list = isinstance(data__doubts, (list, tuple))
            if data__doubts_is_list:
                data__doubts_len = len(data__doubts)
                for data__doubts_x, data__doubts_item in enumerate(data__doubts):
                    validate___definitions_doubt(data__doubts_item, custom_formats, (name_prefix or 'data') + '.doubts[{data__doubts_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_strength(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['reading_brix', 'shown']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['reading_brix', 'shown']}, rule='required')
        data_keys = set(data.keys())
        if 'reading_brix' in data_keys:
            data_keys.remove('reading_brix')
            data__readingbrix = data['reading_brix']
            validate___definitions_measured(data__readingbrix, custom_formats, (name_prefix or 'data') + '.reading_brix')
        if 'shown' in data_keys:
            data_keys.remove('shown')
            data__shown = data['shown']
            if not isinstance(data__shown, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must be object', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'type': 'object'}, rule='type')
            data__shown_is_dict = isinstance(data__shown, dict)
            if data__shown_is_dict:
                data__shown__missing_keys = set(['reading']) - data__shown.keys()
                if data__shown__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must contain ' + (str(sorted(data__shown__missing_keys)) + ' properties'), value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'required': ['reading']}, rule='required')
                data__shown_keys = set(data__shown.keys())
                if 'reading' in data__shown_keys:
                    data__shown_keys.remove('reading')
                    data__shown__reading = data__shown['reading']
                    validate___definitions_shown(data__shown__reading, custom_formats, (name_prefix or 'data') + '.shown.reading')
                if 'factor' in data__shown_keys:
                    data__shown_keys.remove('factor')
                    data__shown__factor = data__shown['factor']
                    validate___definitions_shown(data__shown__factor, custom_formats, (name_prefix or 'data') + '.shown.factor')
                if 'strength' in data__shown_keys:
                    data__shown_keys.remove('strength')
                    data__shown__strength = data__shown['strength']
                    validate___definitions_shown(data__shown__strength, custom_formats, (name_prefix or 'data') + '.shown.strength')
                if 'low' in data__shown_keys:
                    data__shown_keys.remove('low')
                    data__shown__low = data__shown['low']
                    validate___definitions_shown(data__shown__low, custom_formats, (name_prefix or 'data') + '.shown.low')
                if 'high' in data__shown_keys:
                    data__shown_keys.remove('high')
                    data__shown__high = data__shown['high']
                    validate___definitions_shown(data__shown__high, custom_formats, (name_prefix or 'data') + '.shown.high')
                if data__shown_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must not contain ' + str(data__shown_keys) + ' properties', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'strength_pct' in data_keys:
            data_keys.remove('strength_pct')
            data__strengthpct = data['strength_pct']
            validate___definitions_measured(data__strengthpct, custom_formats, (name_prefix or 'data') + '.strength_pct')
        if 'state' in data_keys:
            data_keys.remove('state')
            data__state = data['state']
            if not isinstance(data__state, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.state must be string', value=data__state, name='' + (name_prefix or 'data') + '.state', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__state, str) and data__state == 'weak' or (isinstance(data__state, str) and data__state == 'in_range') or (isinstance(data__state, str) and data__state == 'strong')):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ".state must be one of ['weak', 'in_range', 'strong']", value=data__state, name='' + (name_prefix or 'data') + '.state', definition={'enum': ['weak', 'in_range', 'strong']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_level(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['depth_mm', 'volume_l', 'full_volume_l', 'room_l', 'litres_per_mm', 'shown']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['depth_mm', 'volume_l', 'full_volume_l', 'room_l', 'litres_per_mm', 'shown']}, rule='required')
        data_keys = set(data.keys())
        if 'depth_mm' in data_keys:
            data_keys.remove('depth_mm')
            data__depthmm = data['depth_mm']
            validate___definitions_measured(data__depthmm, custom_formats, (name_prefix or 'data') + '.depth_mm')
        if 'volume_l' in data_keys:
            data_keys.remove('volume_l')
            data__volumel = data['volume_l']
            validate___definitions_measured(data__volumel, custom_formats, (name_prefix or 'data') + '.volume_l')
        if 'full_volume_l' in data_keys:
            data_keys.remove('full_volume_l')
            data__fullvolumel = data['full_volume_l']
            if not isinstance(data__fullvolumel, (int, float, Decimal)) or isinstance(data__fullvolumel, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.full_volume_l must be number', value=data__fullvolumel, name='' + (name_prefix or 'data') + '.full_volume_l', definition={'type': 'number'}, rule='type')
        if 'room_l' in data_keys:
            data_keys.remove('room_l')
            data__rooml = data['room_l']
            if not isinstance(data__rooml, (int, float, Decimal)) or isinstance(data__rooml, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.room_l must be number', value=data__rooml, name='' + (name_prefix or 'data') + '.room_l', definition={'type': 'number'}, rule='type')
        if 'litres_per_mm' in data_keys:
            data_keys.remove('litres_per_mm')
            data__litrespermm = data['litres_per_mm']
            if not isinstance(data__litrespermm, (int, float, Decimal)) or isinstance(data__litrespermm, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.litres_per_mm must be number', value=data__litrespermm, name='' + (name_prefix or 'data') + '.litres_per_mm', definition={'type': 'number'}, rule='type')
        if 'shown' in data_keys:
            data_keys.remove('shown')
            data__shown = data['shown']
            if not isinstance(data__shown, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must be object', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'type': 'object'}, rule='type')
            data__shown_is_dict = isinstance(data__shown, dict)
            if data__shown_is_dict:
                data__shown__missing_keys = set(['depth', 'volume', 'volume_u', 'room', 'full_volume', 'full_depth']) - data__shown.keys()
                if data__shown__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must contain ' + (str(sorted(data__shown__missing_keys)) + ' properties'), value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'required': ['depth', 'volume', 'volume_u', 'room', 'full_volume', 'full_depth']}, rule='required')
                data__shown_keys = set(data__shown.keys())
                if 'depth' in data__shown_keys:
                    data__shown_keys.remove('depth')
                    data__shown__depth = data__shown['depth']
                    validate___definitions_shown(data__shown__depth, custom_formats, (name_prefix or 'data') + '.shown.depth')
                if 'volume' in data__shown_keys:
                    data__shown_keys.remove('volume')
                    data__shown__volume = data__shown['volume']
                    validate___definitions_shown(data__shown__volume, custom_formats, (name_prefix or 'data') + '.shown.volume')
                if 'volume_u' in data__shown_keys:
                    data__shown_keys.remove('volume_u')
                    data__shown__volumeu = data__shown['volume_u']
                    validate___definitions_shown(data__shown__volumeu, custom_formats, (name_prefix or 'data') + '.shown.volume_u')
                if 'room' in data__shown_keys:
                    data__shown_keys.remove('room')
                    data__shown__room = data__shown['room']
                    validate___definitions_shown(data__shown__room, custom_formats, (name_prefix or 'data') + '.shown.room')
                if 'full_volume' in data__shown_keys:
                    data__shown_keys.remove('full_volume')
                    data__shown__fullvolume = data__shown['full_volume']
                    validate___definitions_shown(data__shown__fullvolume, custom_formats, (name_prefix or 'data') + '.shown.full_volume')
                if 'full_depth' in data__shown_keys:
                    data__shown_keys.remove('full_depth')
                    data__shown__fulldepth = data__shown['full_depth']
                    validate___definitions_shown(data__shown__fulldepth, custom_formats, (name_prefix or 'data') + '.shown.full_depth')
                if data__shown_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.shown must not contain ' + str(data__shown_keys) + ' properties', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'additionalProperties': False}, rule='additionalProperties')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_assess_sump_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['sump']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['sump']}, rule='required')
        data_keys = set(data.keys())
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            validate___definitions_sump_typed(data__sump, custom_formats, (name_prefix or 'data') + '.sump')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_fluid_typed(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            validate___definitions_units(data__units, custom_formats, (name_prefix or 'data') + '.units')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_error(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['code', 'path', 'got', 'limit', 'message']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['code', 'path', 'got', 'limit', 'message']}, rule='required')
        data_keys = set(data.keys())
        if 'code' in data_keys:
            data_keys.remove('code')
            data__code = data['code']
            validate___definitions_error_code(data__code, custom_formats, (name_prefix or 'data') + '.code')
        if 'path' in data_keys:
            data_keys.remove('path')
            data__path = data['path']
            if not isinstance(data__path, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.path must be string', value=data__path, name='' + (name_prefix or 'data') + '.path', definition={'type': 'string'}, rule='type')
        if 'got' in data_keys:
            data_keys.remove('got')
            data__got = data['got']
        if 'limit' in data_keys:
            data_keys.remove('limit')
            data__limit = data['limit']
            validate___definitions_limit(data__limit, custom_formats, (name_prefix or 'data') + '.limit')
        if 'message' in data_keys:
            data_keys.remove('message')
            data__message = data['message']
            if not isinstance(data__message, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.message must be string', value=data__message, name='' + (name_prefix or 'data') + '.message', definition={'type': 'string'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_limit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data_keys = set(data.keys())
        if 'minimum' in data_keys:
            data_keys.remove('minimum')
            data__minimum = data['minimum']
            if not isinstance(data__minimum, (int, float, Decimal)) or isinstance(data__minimum, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.minimum must be number', value=data__minimum, name='' + (name_prefix or 'data') + '.minimum', definition={'type': 'number'}, rule='type')
        if 'maximum' in data_keys:
            data_keys.remove('maximum')
            data__maximum = data['maximum']
            if not isinstance(data__maximum, (int, float, Decimal)) or isinstance(data__maximum, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.maximum must be number', value=data__maximum, name='' + (name_prefix or 'data') + '.maximum', definition={'type': 'number'}, rule='type')
        if 'above' in data_keys:
            data_keys.remove('above')
            data__above = data['above']
            if not isinstance(data__above, (int, float, Decimal)) or isinstance(data__above, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.above must be number', value=data__above, name='' + (name_prefix or 'data') + '.above', definition={'type': 'number'}, rule='type')
        if 'below' in data_keys:
            data_keys.remove('below')
            data__below = data['below']
            if not isinstance(data__below, (int, float, Decimal)) or isinstance(data__below, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.below must be number', value=data__below, name='' + (name_prefix or 'data') + '.below', definition={'type': 'number'}, rule='type')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            if not isinstance(data__unit, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.unit must be string', value=data__unit, name='' + (name_prefix or 'data') + '.unit', definition={'type': 'string'}, rule='type')
        if 'allowed' in data_keys:
            data_keys.remove('allowed')
            data__allowed = data['allowed']
            if not isinstance(data__allowed, (list, tuple)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.allowed must be array', value=data__allowed, name='' + (name_prefix or 'data') + '.allowed', definition={'type': 'array'}, rule='type')
            data__allowed_is_list = isinstance(data__allowed, (list, tuple))
            if data__allowed_is_list:
                data__allowed_len = len(data__allowed)
                for data__allowed_x, data__allowed_item in enumerate(data__allowed):
                    if not isinstance(data__allowed_item, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.allowed[{data__allowed_x}]'.format(**locals()) + ' must be string', value=data__allowed_item, name='' + (name_prefix or 'data') + '.allowed[{data__allowed_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'type' in data_keys:
            data_keys.remove('type')
            data__type = data['type']
            if not isinstance(data__type, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.type must be string', value=data__type, name='' + (name_prefix or 'data') + '.type', definition={'type': 'string'}, rule='type')
        if 'most' in data_keys:
            data_keys.remove('most')
            data__most = data['most']
            if not isinstance(data__most, (int, float, Decimal)) or isinstance(data__most, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.most must be number', value=data__most, name='' + (name_prefix or 'data') + '.most', definition={'type': 'number'}, rule='type')
        if 'least' in data_keys:
            data_keys.remove('least')
            data__least = data['least']
            if not isinstance(data__least, (int, float, Decimal)) or isinstance(data__least, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.least must be number', value=data__least, name='' + (name_prefix or 'data') + '.least', definition={'type': 'number'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_error_code(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be string', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'not_json' or (isinstance(data, str) and data == 'duplicate_key') or (isinstance(data, str) and data == 'not_finite') or (isinstance(data, str) and data == 'too_large') or (isinstance(data, str) and data == 'too_deep') or (isinstance(data, str) and data == 'unknown_version') or (isinstance(data, str) and data == 'unknown_op') or (isinstance(data, str) and data == 'missing') or (isinstance(data, str) and data == 'unknown_field') or (isinstance(data, str) and data == 'wrong_type') or (isinstance(data, str) and data == 'too_long') or (isinstance(data, str) and data == 'too_few') or (isinstance(data, str) and data == 'too_many') or (isinstance(data, str) and data == 'not_allowed') or (isinstance(data, str) and data == 'out_of_range') or (isinstance(data, str) and data == 'empty') or (isinstance(data, str) and data == 'not_a_number') or (isinstance(data, str) and data == 'two_separators') or (isinstance(data, str) and data == 'missing_unit') or (isinstance(data, str) and data == 'ambiguous_unit') or (isinstance(data, str) and data == 'unknown_unit') or (isinstance(data, str) and data == 'wrong_dimension') or (isinstance(data, str) and data == 'order') or (isinstance(data, str) and data == 'not_rising') or (isinstance(data, str) and data == 'mark_above_bucket') or (isinstance(data, str) and data == 'no_factor') or (isinstance(data, str) and data == 'neat_oil') or (isinstance(data, str) and data == 'internal')):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + " must be one of ['not_json', 'duplicate_key', 'not_finite', 'too_large', 'too_deep', 'unknown_version', 'unknown_op', 'missing', 'unknown_field', 'wrong_type', 'too_long', 'too_few', 'too_many', 'not_allowed', 'out_of_range', 'empty', 'not_a_number', 'two_separators', 'missing_unit', 'ambiguous_unit', 'unknown_unit', 'wrong_dimension', 'order', 'not_rising', 'mark_above_bucket', 'no_factor', 'neat_oil', 'internal']", value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['not_json', 'duplicate_key', 'not_finite', 'too_large', 'too_deep', 'unknown_version', 'unknown_op', 'missing', 'unknown_field', 'wrong_type', 'too_long', 'too_few', 'too_many', 'not_allowed', 'out_of_range', 'empty', 'not_a_number', 'two_separators', 'missing_unit', 'ambiguous_unit', 'unknown_unit', 'wrong_dimension', 'order', 'not_rising', 'mark_above_bucket', 'no_factor', 'neat_oil', 'internal']}, rule='enum')
    return data

def validate___definitions_reply(data, custom_formats={}, name_prefix=None):
    data_one_of_count1 = 0
    if data_one_of_count1 < 2:
        try:
            if not isinstance(data, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
            data_is_dict = isinstance(data, dict)
            if data_is_dict:
                data__missing_keys = set(['v', 'id', 'ok', 'result']) - data.keys()
                if data__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['v', 'id', 'ok', 'result']}, rule='required')
                data_keys = set(data.keys())
                if 'v' in data_keys:
                    data_keys.remove('v')
                    data__v = data['v']
                    if not (isinstance(data__v, (int, float)) and (not isinstance(data__v, bool)) and (data__v == 1)):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.v must be same as const definition: 1', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'const': 1}, rule='const')
                if 'id' in data_keys:
                    data_keys.remove('id')
                    data__id = data['id']
                    if not isinstance(data__id, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.id must be string', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'type': 'string'}, rule='type')
                if 'ok' in data_keys:
                    data_keys.remove('ok')
                    data__ok = data['ok']
                    if not (isinstance(data__ok, bool) and data__ok is True):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.ok must be same as const definition: True', value=data__ok, name='' + (name_prefix or 'data') + '.ok', definition={'const': True}, rule='const')
                if 'result' in data_keys:
                    data_keys.remove('result')
                    data__result = data['result']
                    if not isinstance(data__result, dict):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.result must be object', value=data__result, name='' + (name_prefix or 'data') + '.result', definition={'type': 'object'}, rule='type')
                if data_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
            data_one_of_count1 += 1
        except (JsonSchemaValueException, JsonSchemaValuesException):
            pass
    if data_one_of_count1 < 2:
        try:
            if not isinstance(data, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
            data_is_dict = isinstance(data, dict)
            if data_is_dict:
                data__missing_keys = set(['v', 'id', 'ok', 'error']) - data.keys()
                if data__missing_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['v', 'id', 'ok', 'error']}, rule='required')
                data_keys = set(data.keys())
                if 'v' in data_keys:
                    data_keys.remove('v')
                    data__v = data['v']
                    if not (isinstance(data__v, (int, float)) and (not isinstance(data__v, bool)) and (data__v == 1)):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.v must be same as const definition: 1', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'const': 1}, rule='const')
                if 'id' in data_keys:
                    data_keys.remove('id')
                    data__id = data['id']
                    if not isinstance(data__id, str):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.id must be string', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'type': 'string'}, rule='type')
                if 'ok' in data_keys:
                    data_keys.remove('ok')
                    data__ok = data['ok']
                    if not (isinstance(data__ok, bool) and data__ok is False):
                        raise JsonSchemaValueException('' + (name_prefix or 'data') + '.ok must be same as const definition: False', value=data__ok, name='' + (name_prefix or 'data') + '.ok', definition={'const': False}, rule='const')
                if 'error' in data_keys:
                    data_keys.remove('error')
                    data__error = data['error']
                    validate___definitions_error(data__error, custom_formats, (name_prefix or 'data') + '.error')
                if data_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
            data_one_of_count1 += 1
        except (JsonSchemaValueException, JsonSchemaValuesException):
            pass
    if data_one_of_count1 != 1:
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be valid exactly by one definition' + (' (' + str(data_one_of_count1) + ' matches found)'), value=data, name='' + (name_prefix or 'data') + '', definition={'oneOf': [{'type': 'object', 'properties': {'v': {'const': 1}, 'id': {'type': 'string'}, 'ok': {'const': True}, 'result': {'type': 'object'}}, 'required': ['v', 'id', 'ok', 'result'], 'additionalProperties': False}, {'type': 'object', 'properties': {'v': {'const': 1}, 'id': {'type': 'string'}, 'ok': {'const': False}, 'error': {'type': 'object', 'properties': {'code': {'$ref': '#/definitions/error_code'}, 'path': {'type': 'string', 'description': 'Where in the request, such as body.sump.points[2].depth'}, 'got': {'description': 'What stood there; null when nothing did.'}, 'limit': {'$ref': '#/definitions/limit'}, 'message': {'type': 'string'}}, 'required': ['code', 'path', 'got', 'limit', 'message'], 'additionalProperties': False, 'description': 'Why a request was refused.'}}, 'required': ['v', 'id', 'ok', 'error'], 'additionalProperties': False}]}, rule='oneOf')
    return data

def validate___definitions_request(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be object', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['v', 'id', 'op', 'body']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must contain ' + (str(sorted(data__missing_keys)) + ' properties'), value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['v', 'id', 'op', 'body']}, rule='required')
        data_keys = set(data.keys())
        if 'v' in data_keys:
            data_keys.remove('v')
            data__v = data['v']
            if not isinstance(data__v, int) and (not (isinstance(data__v, float) and data__v.is_integer())) or isinstance(data__v, bool):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.v must be integer', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'type': 'integer'}, rule='type')
            if not (isinstance(data__v, (int, float)) and (not isinstance(data__v, bool)) and (data__v == 1)):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.v must be same as const definition: 1', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'const': 1}, rule='const')
        if 'id' in data_keys:
            data_keys.remove('id')
            data__id = data['id']
            if not isinstance(data__id, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.id must be string', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'type': 'string'}, rule='type')
            if isinstance(data__id, str):
                data__id_len = len(data__id)
                if data__id_len > 80:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.id must be shorter than or equal to 80 characters', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'maxLength': 80}, rule='maxLength')
        if 'op' in data_keys:
            data_keys.remove('op')
            data__op = data['op']
            if not isinstance(data__op, str):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.op must be string', value=data__op, name='' + (name_prefix or 'data') + '.op', definition={'type': 'string'}, rule='type')
            if isinstance(data__op, str):
                data__op_len = len(data__op)
                if data__op_len > 40:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.op must be shorter than or equal to 40 characters', value=data__op, name='' + (name_prefix or 'data') + '.op', definition={'maxLength': 40}, rule='maxLength')
        if 'body' in data_keys:
            data_keys.remove('body')
            data__body = data['body']
            if not isinstance(data__body, dict):
                raise JsonSchemaValueException('' + (name_prefix or 'data') + '.body must be object', value=data__body, name='' + (name_prefix or 'data') + '.body', definition={'type': 'object'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

VALIDATORS = {
    "request": validate___definitions_request,
    "reply": validate___definitions_reply,
    "error": validate___definitions_error,
    "assess_sump_body": validate___definitions_assess_sump_body,
    "assess_sump_result": validate___definitions_assess_sump_result,
    "describe_body": validate___definitions_describe_body,
    "describe_result": validate___definitions_describe_result,
    "plan_check_body": validate___definitions_plan_check_body,
    "plan_check_result": validate___definitions_plan_check_result,
    "plan_recipe_body": validate___definitions_plan_recipe_body,
    "plan_recipe_result": validate___definitions_plan_recipe_result,
    "read_machine_body": validate___definitions_read_machine_body,
    "read_machine_result": validate___definitions_read_machine_result,
    "read_quantity_body": validate___definitions_read_quantity_body,
    "read_quantity_result": validate___definitions_read_quantity_result,
}
