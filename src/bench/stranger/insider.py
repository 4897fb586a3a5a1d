"""Who wants his own unit to pass."""
from client import *
import threading, subprocess, collections
A="Maren Lindqvist";T="Rotimi Adeyemi";T2="Sofia Brandt";I="Katarina Novak";E="Tomas Eriksen";L="Ines Moreau";B="Bela Varga"
n=[600]
def to(name):
    n[0]+=1; return tab(name,f'127.2.{n[0]//250}.{n[0]%250+1}')
def show(what,r): print(what,'->',r[0],r[1][:230].replace('\n',' '))
def prove(t,serial,lst=None,**kw):
    lst=lst or t.js('/api/units')['lists'][0]['id']
    s,b=t.post('/api/session/start',{'list':lst,'serial':serial,'tester':'x','conditions':kw.get('conditions',[]),'opened':[],'touched':[],'takeOver':True})
    if s!=200: return s,b
    st=json.loads(b)
    for _ in range(60):
        step=st['session']['step']
        if not step: break
        if step['cautions'] and step.get('confirm'): st=json.loads(t.post('/api/session/confirm',{'step':step['id']})[1]); step=st['session']['step']
        v='0.07' if step['asks']=='joined' else 'OL'
        s,b=t.post('/api/session/take',{'step':step['id'],'typed':v,'volts':''})
        if s!=200: print(s,b); break
        st=json.loads(b)
    return t.post('/api/session/finish',{})
b=to(B)
r=prove(b,'IN-1'); print('prove',r[0])
u=b.js('/api/units?search=IN-1')['units'][0]; print(u['serial'],u['verdict'],u['who']); uid=u['id']
r=b.post('/api/keys',{'passphrase':PP,'until':''}); show('key of Bela',r); kb=json.loads(r[1])['keys'][0]
r=b.post(f'/api/units/{uid}/sign',{'role':'inspector','key':kb,'passphrase':PP,'who':I})
ok('nobody inspects his own',r[0]==400,r)
show('as INSPECTOR',b.post(f'/api/units/{uid}/sign',{'role':'INSPECTOR','key':kb,'passphrase':PP,'who':I}))
for c in ([{'name':'operator','value':I}],[{'name':'Operator ','value':I}],[{'name':'tester','value':I}],[{'name':'inspector','value':I}],[{'name':'tested by','value':I}],[{'name':'operator\u200b','value':I}],[{'name':'OPERATOR.','value':I}],[{'name':'technician','value':I}],[{'name':'who','value':I}]):
    r=b.post('/api/session/start',{'list':b.js('/api/units')['lists'][0]['id'],'serial':'IN-2','tester':'x','conditions':c,'opened':[],'touched':[],'takeOver':True})
    print('condition',c,'->',r[0],r[1][:160] if r[0]!=200 else json.loads(r[1])['session']['conditions'])
    b.post('/api/session/leave',{})
# race of two starts
t,t2=to(T),to(T2); lst=t.js('/api/units')['lists'][0]['id']; mism=0
for k in range(40):
    res={}
    def st(tt,nm): res[nm]=tt.post('/api/session/start',{'list':lst,'serial':f'RACE-{k}-{nm[0]}','tester':'','conditions':[],'opened':[],'touched':[],'takeOver':True})[0]
    th=[threading.Thread(target=st,args=a) for a in((t,T),(t2,T2))]; random.shuffle(th); [q.start() for q in th]; [q.join() for q in th]
    tester=t.js('/api/state')['tester']
    a=t.post('/api/session/note',{'text':'x'})[0]; c=t2.post('/api/session/note',{'text':'x'})[0]
    leader=T if a==200 else T2 if c==200 else None
    if leader!=tester: mism+=1
    (t if leader==T else t2).post('/api/session/leave',{})
ok('40 races of two who begin: readings stand under who leads',mism==0,mism)
# practice meter at a real unit
r=t.post('/api/session/start',{'list':lst,'serial':'PM-1','tester':'','conditions':[],'opened':[],'touched':[],'takeOver':True}); print('start',r[0])
for addr in ('practice','practice:1','tcp:127.0.0.1:22','serial:/etc/passwd','/etc/passwd','serial:'+FOLDER+'/units.db','tcp:169.254.169.254:80','file:///etc/passwd','exec:ls','hislip:127.0.0.1'):
    show('meter '+addr,t.post('/api/session/meter',{'which':'meter','address':addr,'profile':''}))
show('meter profile ../../',t.post('/api/session/meter',{'which':'meter','address':'tcp:127.0.0.1:22','profile':'../../etc/passwd'}))
t.post('/api/session/meter',{'which':'meter','address':'none','profile':''}); t.post('/api/session/leave',{})
ends()
