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

def validate___definitions_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must be string', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'mm' or (isinstance(data, str) and data == 'cm') or (isinstance(data, str) and data == 'm') or (isinstance(data, str) and data == 'in') or (isinstance(data, str) and data == 'ft') or (isinstance(data, str) and data == 'L') or (isinstance(data, str) and data == 'mL') or (isinstance(data, str) and data == 'US gal') or (isinstance(data, str) and data == 'US qt') or (isinstance(data, str) and data == 'US pt') or (isinstance(data, str) and data == 'US fl oz') or (isinstance(data, str) and data == 'imp gal') or (isinstance(data, str) and data == 'imp qt') or (isinstance(data, str) and data == 'imp pt') or (isinstance(data, str) and data == 'imp fl oz') or (isinstance(data, str) and data == '°C') or (isinstance(data, str) and data == '°F') or (isinstance(data, str) and data == 'kg') or (isinstance(data, str) and data == 'lb') or (isinstance(data, str) and data == '%') or (isinstance(data, str) and data == 'Brix') or (isinstance(data, str) and data == '1')):
        raise JsonSchemaValueException('' + (name_prefix or 'data') + " must be one of ['mm', 'cm', 'm', 'in', 'ft', 'L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz', '°C', '°F', 'kg', 'lb', '%', 'Brix', '1']", value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['mm', 'cm', 'm', 'in', 'ft', 'L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz', '°C', '°F', 'kg', 'lb', '%', 'Brix', '1']}, rule='enum')
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
    "assess_sump_body": validate___definitions_assess_sump_body,
    "describe_body": validate___definitions_describe_body,
    "plan_check_body": validate___definitions_plan_check_body,
    "plan_recipe_body": validate___definitions_plan_recipe_body,
    "read_machine_body": validate___definitions_read_machine_body,
    "read_quantity_body": validate___definitions_read_quantity_body,
}
